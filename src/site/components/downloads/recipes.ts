/**
 * Two short programs that read one table without losing the square NA, which R and Python take for a missing value.
 *
 * @param file name of a CSV file with the column `square`
 * @param taxonId a taxon to pick out, where the table has one
 * @example recipes("squares.csv", "invented-red-tailed").r // 'squares <- read.csv("squares.csv", na.strings = "")\n…'
 */
export function recipes(file: string, taxonId: string | undefined): { r: string; python: string } {
  const name = (file.split("/").at(-1) ?? file).replace(/\.csv$/, "").replace(/\W/g, "_");
  const filename = JSON.stringify(file);
  const r = [`${name} <- read.csv(${filename}, na.strings = "")`];
  const python = ["import pandas as pd", `${name} = pd.read_csv(${filename}, keep_default_na=False, na_values=[""])`];
  if (taxonId !== undefined) {
    r.push(`one <- subset(${name}, taxon_id == ${JSON.stringify(taxonId)})`);
    python.push(`one = ${name}[${name}["taxon_id"] == ${JSON.stringify(taxonId)}]`);
  }
  return { r: r.join("\n"), python: python.join("\n") };
}
