/** The part of jStat the measures use: distributions by name, each with its cumulative function and its inverse. */
declare module "jstat" {
  const jStat: {
    beta: { cdf(x: number, alpha: number, beta: number): number; inv(p: number, alpha: number, beta: number): number };
    normal: {
      cdf(x: number, mean: number, deviation: number): number;
      inv(p: number, mean: number, deviation: number): number;
    };
    studentt: { cdf(x: number, freedom: number): number; inv(p: number, freedom: number): number };
  };
  export default jStat;
}
