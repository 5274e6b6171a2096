import { hashed } from "./random.ts";

/**
 * A smooth invented surface: random values on a lattice, blended between. Mean 0.5, from 0 to 1.
 *
 * @param x kilometres east on the common plane
 * @param y kilometres north on it
 * @param wavelength side of the lattice in kilometres
 * @param salt tells surfaces apart
 * @example smooth(0, 0, 30, 7) === hashed(0, 0, 7) // true: on a lattice point it is the lattice's own value
 */
export function smooth(x: number, y: number, wavelength: number, salt: number): number {
  const column = Math.floor(x / wavelength);
  const row = Math.floor(y / wavelength);
  const across = eased(x / wavelength - column);
  const up = eased(y / wavelength - row);
  const south = hashed(column, row, salt) * (1 - across) + hashed(column + 1, row, salt) * across;
  const north = hashed(column, row + 1, salt) * (1 - across) + hashed(column + 1, row + 1, salt) * across;
  return south * (1 - up) + north * up;
}

function eased(part: number): number {
  return part * part * (3 - 2 * part);
}
