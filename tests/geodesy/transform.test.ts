import { describe, expect, it } from "vitest";
import { coordinateSystem } from "../../src/geodesy/coordinate-systems.ts";
import { transform } from "../../src/geodesy/transform.ts";
import { CS2CS_NOTE, cs2cs } from "../support/cs2cs.ts";
import { readReferenceFile } from "../support/reference.ts";

const WGS84 = "EPSG:4326";
interface Points {
  proj_strings: Record<string, string>;
  points: { id: string; place: string; lat: number; lon: number; expected: Record<string, [number, number]> }[];
}
interface TestPoints {
  points: { id: string; lat: number; lon: number; E: number; N: number }[];
}
const { points, proj_strings: projStrings } = readReferenceFile<Points>("points.json");
const { points: officialPoints } = readReferenceFile<TestPoints>("ostn15-test-points.json");

const degrees = (whole: number, minutes: number, seconds: number) => whole + minutes / 60 + seconds / 3600;
const apart = (a: readonly [number, number], b: readonly [number, number]) => Math.hypot(a[0] - b[0], a[1] - b[1]);

describe("published worked examples", () => {
  it("projects the Caister water tower on OSGB36 (Ordnance Survey, A guide to coordinate systems in Great Britain, Annexe C)", () => {
    const out = transform("EPSG:4277", "EPSG:27700", degrees(1, 43, 4.5177), degrees(52, 39, 27.2531));
    // Published to a millimetre.
    expect(apart(out, [651409.903, 313177.27])).toBeLessThan(0.001);
  });

  it("projects 50°30'N 0°30'E (IOGP Guidance Note 7-2, method 9807, with the register's own scale factor: PROJ 9.1.1)", () => {
    // The note prints 577274.99 69740.50 with a rounded scale factor, 8 mm more.
    expect(apart(transform("EPSG:4277", "EPSG:27700", 0.5, 50.5), [577274.9838, 69740.4923])).toBeLessThan(0.001);
  });

  it("projects 50°N 5°E on LAEA Europe (IOGP Guidance Note 7-2, method 9820)", () => {
    // Published to a centimetre, so half a centimetre each way.
    expect(apart(transform("EPSG:4258", "EPSG:3035", 5, 50), [3962799.45, 2999718.85])).toBeLessThan(0.0071);
  });

  it("transforms the Spire of Dublin from ITM to the Irish Grid (published as 315904 234671)", () => {
    // Published to a metre, rounded.
    expect(apart(transform("EPSG:2157", "EPSG:29903", 715830, 734697), [315904, 234671])).toBeLessThan(0.71);
  });

  it("transforms a point in Brussels to Belgian Lambert 72 (cs2cs 9.1.1, EPSG:15929)", () => {
    expect(apart(transform(WGS84, "EPSG:31370", 4.3525, 50.8467), [148855.4227, 170699.6759])).toBeLessThan(0.001);
  });
});

describe("points of tests/reference/points.json", () => {
  const cases = points.flatMap(({ id, place, lon, lat, expected }) =>
    Object.entries(expected).map(([crs, en]) => ({ id, place, lon, lat, crs, en })),
  );

  it.each(cases)("$id $place in $crs agrees with PROJ", ({ lon, lat, crs, en }) => {
    // Values are given to 0.1 mm, the polynomial's to 1 mm; the OSGB36 shift is inverted to first order, 0.8 mm off.
    expect(apart(transform(WGS84, crs, lon, lat), en)).toBeLessThan(0.001);
  });

  it.each(cases)("$id $place comes back from $crs", ({ lon, lat, crs, en }) => {
    const [x, y] = transform(crs, WGS84, en[0], en[1]);
    // Two millimetres in degrees of latitude: the given values' own rounding and the shift's inverse.
    expect(Math.abs(x - lon) * Math.cos((lat * Math.PI) / 180)).toBeLessThan(2e-8);
    expect(Math.abs(y - lat)).toBeLessThan(2e-8);
  });
});

describe("official OSTN15 test points", () => {
  const errors = officialPoints.map(({ lon, lat, E, N }) =>
    apart(transform("EPSG:4258", "EPSG:27700", lon, lat), [E, N]),
  );

  it("are forty", () => expect(officialPoints).toHaveLength(40));

  it("are met within 5 m by the seven parameters, as coordinate-systems.ts states", () => {
    expect(Math.max(...errors)).toBeLessThan(5);
    expect(coordinateSystem("EPSG:27700").accuracy).toBe(5);
  });

  it("are met within 2 m on average (Ordnance Survey states up to 3.5 m at 95 %)", () => {
    expect(errors.reduce((sum, error) => sum + error, 0) / errors.length).toBeLessThan(2);
  });
});

describe("the Irish polynomial's area", () => {
  it("ends in the Atlantic, where the seven parameters take over (cs2cs 9.1.1, EPSG:1954)", () => {
    expect(apart(transform(WGS84, "EPSG:29903", -11, 53.3), [55.2687, 231915.4298])).toBeLessThan(0.001);
  });

  it("stays within 0.9 m of the seven parameters at the places of the points table", () => {
    const irish = points.filter(({ id }) => id.startsWith("IE"));
    const gaps = irish.map(({ lon, lat }) =>
      apart(transform(WGS84, "EPSG:29903", lon, lat), transform(WGS84, "EPSG:29902", lon, lat)),
    );
    // 0.833 m is the largest of twelve, by PROJ and Python.
    expect(Math.max(...gaps)).toBeCloseTo(0.833, 2);
  });
});

describe("live comparison with PROJ", () => {
  const lattice = [-10, -8, -6, -4, -2, 0, 1.5].flatMap((x) =>
    [49.2, 51, 53, 55, 57, 59, 60.8].map((y): [number, number] => [x, y]),
  );

  it.each(Object.entries(projStrings))(`agrees with cs2cs on %s at 49 positions${CS2CS_NOTE}`, (crs, definition) => {
    const code = crs === "EPSG:29903" ? "EPSG:29902" : crs;
    const theirs = cs2cs("+proj=longlat +datum=WGS84", definition, lattice);
    const gaps = theirs.map((position, index) => {
      const [x, y] = lattice[index] as [number, number];
      return apart(transform(WGS84, code, x, y), position);
    });
    // The shift to OSGB36 is inverted to first order here, up to 1.3 mm off.
    expect(Math.max(0, ...gaps)).toBeLessThan(0.002);
  });

  it.each([
    ["EPSG:4277", "EPSG:27700"],
    ["EPSG:4300", "EPSG:29903"],
    ["EPSG:4230", "EPSG:23030"],
    ["EPSG:4173", "EPSG:2157"],
  ])(`projects %s to %s as cs2cs does${CS2CS_NOTE}`, (from, to) => {
    const theirs = cs2cs(
      from,
      to,
      lattice.map(([x, y]): [number, number] => [y, x]),
    );
    const gaps = theirs.map((position, index) => {
      const [x, y] = lattice[index] as [number, number];
      return apart(transform(from, to, x, y), position);
    });
    expect(Math.max(0, ...gaps)).toBeLessThan(0.001);
  });
});

describe("refusals", () => {
  it.each([
    ["EPSG:1234", "EPSG:27700", 0, 0, "unknown coordinate system “EPSG:1234”"],
    [WGS84, "nowhere", 0, 0, "unknown coordinate system “nowhere”"],
    [WGS84, "EPSG:27700", Number.NaN, 52, "NaN 52 is not a longitude"],
    [WGS84, "EPSG:27700", 52, 91, "52 91 is not a longitude from −180 to 180 and a latitude from −90 to 90"],
    [WGS84, "EPSG:3035", Number.POSITIVE_INFINITY, 52, "Infinity 52 is not a longitude"],
    ["EPSG:27700", WGS84, 400000, Number.NaN, "400000 NaN is not a position in EPSG:27700"],
    ["EPSG:27700", WGS84, Number.NEGATIVE_INFINITY, 0, "is not a position in EPSG:27700"],
    [WGS84, "EPSG:27700", 150, -30, "longitude 150"],
    ["EPSG:3035", WGS84, 1e9, 1e9, "cannot transform 1000000000 1000000000 from EPSG:3035 to EPSG:4326"],
  ])("from %s to %s at %s %s says why", (from, to, x, y, reason) => {
    expect(() => transform(from, to, x, y)).toThrow(Error);
    expect(() => transform(from, to, x, y)).toThrow(reason);
  });

  it("leaves a position as it is between a system and itself", () => {
    expect(transform("EPSG:27700", "EPSG:27700", 538880.5, 177340.25)).toEqual([538880.5, 177340.25]);
  });
});

describe("examples", () => {
  it("transform", () => {
    expect(
      apart(transform("EPSG:4277", "EPSG:27700", 1.7179215833, 52.6575703056), [651409.903, 313177.27]),
    ).toBeLessThan(0.001);
  });
  it("coordinateSystem", () => expect(coordinateSystem("EPSG:27700").name).toBe("British National Grid"));
});
