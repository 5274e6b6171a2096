import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Square, SquareSize } from "../../src/grids/grid.ts";
import { centreOf, cornersOf, parentOf } from "../../src/grids/squares.ts";
import type { GridCase } from "./grid-cases.ts";
import { GRID_CASES } from "./grid-cases.ts";

/** Positions on a grid with a size the grid has. */
function placesOf({ box, sizes }: GridCase) {
  return fc.record({
    longitude: fc.double({ min: box.west, max: box.east, noNaN: true }),
    latitude: fc.double({ min: box.south, max: box.north, noNaN: true }),
    size: fc.constantFrom(...sizes),
  });
}

function squareOf({ grid }: GridCase, longitude: number, latitude: number, size: SquareSize): Square {
  const square = grid.squareAt(grid.project(longitude, latitude), size);
  if (square === undefined) throw new Error(`${longitude} ${latitude} has no square of ${size} m`);
  return square;
}

describe.each(GRID_CASES)("laws of the $id grid", (gridCase) => {
  const { grid } = gridCase;
  const places = placesOf(gridCase);

  it("a point lies in its square", () => {
    fc.assert(
      fc.property(places, ({ longitude, latitude, size }) => {
        const point = grid.project(longitude, latitude);
        const square = squareOf(gridCase, longitude, latitude, size);
        expect(point.easting).toBeGreaterThanOrEqual(square.easting);
        expect(point.easting).toBeLessThan(square.easting + size);
        expect(point.northing).toBeGreaterThanOrEqual(square.northing);
        expect(point.northing).toBeLessThan(square.northing + size);
      }),
    );
  });

  it("reading what was written gives the square back", () => {
    fc.assert(
      fc.property(places, ({ longitude, latitude, size }) => {
        const square = squareOf(gridCase, longitude, latitude, size);
        const reference = grid.format(square);
        expect(grid.parse(reference)).toEqual(square);
        expect(grid.parse(` ${reference.toLowerCase()} `)).toEqual(square);
      }),
    );
  });

  it("a coarser square of the same point is the parent of the finer, or the finer lies across two", () => {
    fc.assert(
      fc.property(places, fc.constantFrom(...gridCase.sizes), ({ longitude, latitude, size }, coarser) => {
        fc.pre(coarser >= size);
        const square = squareOf(gridCase, longitude, latitude, size);
        const parent = parentOf(grid, square, coarser);
        const across = coarser % size !== 0 && (square.easting % coarser) + size > coarser;
        const up = coarser % size !== 0 && (square.northing % coarser) + size > coarser;
        expect(parent).toEqual(across || up ? undefined : squareOf(gridCase, longitude, latitude, coarser));
      }),
    );
  });

  it("corners and centre come back through WGS84 to a millimetre and a half", () => {
    fc.assert(
      fc.property(places, ({ longitude, latitude, size }) => {
        const square = squareOf(gridCase, longitude, latitude, Math.min(size, 10_000) as SquareSize);
        for (const corner of [...cornersOf(square), centreOf(square)]) {
          const [x, y] = grid.unproject(corner);
          const back = grid.project(x, y);
          // A corner beyond a UTM zone's edge comes back in the next zone.
          if (back.crs !== corner.crs) continue;
          // The shift to OSGB36 is inverted to first order, 1.3 mm at most.
          expect(Math.hypot(back.easting - corner.easting, back.northing - corner.northing)).toBeLessThan(0.0015);
        }
      }),
    );
  });
});

describe.each(GRID_CASES.filter(({ id }) => id !== "laea" && id !== "mgrs"))("figures of the $id grid", (gridCase) => {
  it("of a parent are those of the finer reference cut off", () => {
    const { grid } = gridCase;
    fc.assert(
      fc.property(placesOf(gridCase), ({ longitude, latitude }) => {
        const [letters = "", figures = ""] =
          /^([A-Z]+)(\d{10})$/.exec(grid.format(squareOf(gridCase, longitude, latitude, 1)))?.slice(1) ?? [];
        for (const [size, kept] of [
          [10, 4],
          [100, 3],
          [1_000, 2],
          [10_000, 1],
          [100_000, 0],
        ] as const) {
          const cut = letters + figures.slice(0, kept) + figures.slice(5, 5 + kept);
          expect(grid.format(squareOf(gridCase, longitude, latitude, size))).toBe(cut);
        }
      }),
    );
  });
});
