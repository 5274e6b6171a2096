import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  IRISH_POLYNOMIAL_AREA,
  irishPolynomialCovers,
  irishPolynomialFromWgs84,
  irishPolynomialToWgs84,
} from "../../src/geodesy/irish-polynomial.ts";

describe("irishPolynomialToWgs84", () => {
  it("gives the value computed in Python from the register's coefficients (EPSG v9.2) at 55°N 6°30'W", () => {
    const [longitude, latitude] = irishPolynomialToWgs84(-6.5, 55);
    expect(longitude).toBeCloseTo(-6.5009491261, 10);
    expect(latitude).toBeCloseTo(55.0000297229, 10);
  });
});

describe("irishPolynomialFromWgs84", () => {
  const { west, south, east, north } = IRISH_POLYNOMIAL_AREA;
  const inside = fc.record({
    longitude: fc.double({ min: west, max: east, noNaN: true }),
    latitude: fc.double({ min: south, max: north, noNaN: true }),
  });

  it("undoes irishPolynomialToWgs84 to a millionth of a metre anywhere in the area", () => {
    fc.assert(
      fc.property(inside, ({ longitude, latitude }) => {
        const [x, y] = irishPolynomialToWgs84(...irishPolynomialFromWgs84(longitude, latitude));
        expect(Math.abs(x - longitude)).toBeLessThan(1e-11);
        expect(Math.abs(y - latitude)).toBeLessThan(1e-11);
      }),
    );
  });

  it("undoes the worked value", () => {
    const [longitude, latitude] = irishPolynomialFromWgs84(-6.5009491261, 55.0000297229);
    expect(longitude).toBeCloseTo(-6.5, 9);
    expect(latitude).toBeCloseTo(55, 9);
  });

  it("refuses a place where the polynomial means nothing", () => {
    expect(() => irishPolynomialFromWgs84(170, -60)).toThrow(
      "EPSG:1041 does not settle at 170 -60; use it inside Ireland only",
    );
  });
});

describe("irishPolynomialCovers", () => {
  it.each([
    [-6.26, 53.35, true],
    [-10.56, 51.39, true],
    [-10.57, 53, false],
    [-5.33, 54.5, false],
    [-8, 55.44, false],
  ])("at %s %s is %s (EPSG extent 1305)", (longitude, latitude, covered) => {
    expect(irishPolynomialCovers(longitude, latitude)).toBe(covered);
  });
});
