/** One subpath of an SVG path: its points in order; `closed` where it ends with z. */
export interface Subpath {
  readonly points: [x: number, y: number][];
  readonly closed: boolean;
}

/**
 * Reads the commands M m L l H h V v z of an SVG path, after the grammar of SVG 2 §9.3. Written apart from the
 * code that writes paths.
 */
export function readPath(d: string): Subpath[] {
  const subpaths: { points: [number, number][]; closed: boolean }[] = [];
  const at: [number, number] = [0, 0];
  let start: [number, number] = [0, 0];
  for (const [, letter = "", rest = ""] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const numbers = [...rest.matchAll(/-?(?:\d+\.?\d*|\.\d+)/g)].map(([text]) => Number(text));
    const relative = letter === letter.toLowerCase();
    if (letter === "z" || letter === "Z") {
      const last = subpaths.at(-1);
      if (last) last.closed = true;
      [at[0], at[1]] = start;
      continue;
    }
    const width = "hHvV".includes(letter) ? 1 : 2;
    for (let i = 0; i < numbers.length; i += width) {
      const [a = 0, b = 0] = numbers.slice(i, i + width);
      if (letter === "h" || letter === "H") at[0] = relative ? at[0] + a : a;
      else if (letter === "v" || letter === "V") at[1] = relative ? at[1] + a : a;
      else [at[0], at[1]] = relative ? [at[0] + a, at[1] + b] : [a, b];
      if ((letter === "m" || letter === "M") && i === 0) {
        start = [at[0], at[1]];
        subpaths.push({ points: [[at[0], at[1]]], closed: false });
      } else {
        const last = subpaths.at(-1);
        if (last?.closed) subpaths.push({ points: [[...start], [at[0], at[1]]], closed: false });
        else last?.points.push([at[0], at[1]]);
      }
    }
  }
  return subpaths;
}

/** Area a path fills under the non-zero rule, for shapes whose holes turn the other way: sums of signed areas. */
export function filledArea(d: string): number {
  return Math.abs(readPath(d).reduce((sum, { points }) => sum + signedArea(points), 0));
}

function signedArea(points: readonly (readonly [number, number])[]): number {
  return points.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}
