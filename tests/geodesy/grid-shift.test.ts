import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, describe, expect, it } from "vitest";
import { gridShiftFromWgs84, gridShiftToWgs84, readGridShift } from "../../src/geodesy/grid-shift.ts";
import { transform } from "../../src/geodesy/transform.ts";
import { Mistake } from "../../src/mistake.ts";
import { CS2CS_NOTE, cs2cs } from "../support/cs2cs.ts";
import { MADE_TABLES, makeNtv2 } from "../support/ntv2.ts";
import { readReferenceFile } from "../support/reference.ts";

const ABOUT = { name: "made.gsb", datum: "EPSG:4277", accuracy: 0.1 };
const made = readGridShift(makeNtv2(MADE_TABLES), ABOUT);
/** Degrees to ten decimals are about 0.01 mm; shifts are stored in single precision. */
const DECIMALS = 9;

const folder = mkdtempSync(join(tmpdir(), "grid-shift-"));
afterAll(() => rmSync(folder, { recursive: true }));

describe("a made-up file of two tables, read as PROJ 9.1.1 reads it (cs2cs -f %.10f, +nadgrids)", () => {
  it.each([
    [0.3, 51.7, 0.2985154167, 51.7004208333],
    [-1.4, 53.3, -1.4025475, 53.3004652778],
    [1.716, 52.658, 1.7139602222, 52.6583986494],
    [1.3, 52.9, 1.2979833333, 52.9004902018],
    [1.99, 52.51, 1.987945, 52.5103643407],
  ])("shifts OSGB36 %s %s to WGS84", (longitude, latitude, x, y) => {
    const out = gridShiftToWgs84(made, longitude, latitude);
    expect(out?.[0]).toBeCloseTo(x, DECIMALS);
    expect(out?.[1]).toBeCloseTo(y, DECIMALS);
  });

  it.each([
    [0.3, 51.7, 0.3014836846, 51.6995791608],
    [-1.4, 53.3, -1.3974541108, 53.2995347545],
    [1.716, 52.658, 1.7180398911, 52.6576014972],
    [1.3, 52.9, 1.3020167787, 52.899509939],
  ])("shifts WGS84 %s %s to OSGB36", (longitude, latitude, x, y) => {
    const out = gridShiftFromWgs84(made, longitude, latitude);
    expect(out?.[0]).toBeCloseTo(x, DECIMALS);
    expect(out?.[1]).toBeCloseTo(y, DECIMALS);
  });

  it(`agrees with cs2cs at positions in both tables${CS2CS_NOTE}`, () => {
    const file = join(folder, "made.gsb");
    writeFileSync(file, makeNtv2(MADE_TABLES));
    const positions = [...Array(60).keys()].map((n): [number, number] => [
      -1.95 + 0.065 * n,
      51.05 + ((n * 0.618) % 2.9),
    ]);
    const theirs = cs2cs(`+proj=longlat +ellps=airy +nadgrids=${file}`, "+proj=longlat +datum=WGS84", positions);
    for (const [index, [x, y]] of theirs.entries()) {
      const ours = gridShiftToWgs84(made, ...(positions[index] as [number, number]));
      expect(ours?.[0]).toBeCloseTo(x, 8);
      expect(ours?.[1]).toBeCloseTo(y, 8);
    }
  });

  it("is read the same in the other byte order", () => {
    const other = readGridShift(makeNtv2(MADE_TABLES, false), ABOUT);
    expect(gridShiftToWgs84(other, 1.716, 52.658)).toEqual(gridShiftToWgs84(made, 1.716, 52.658));
  });

  it("is undone by its inverse wherever both are covered", () => {
    const position = fc.record({
      longitude: fc.double({ min: -1.99, max: 1.99, noNaN: true }),
      latitude: fc.double({ min: 51.01, max: 53.99, noNaN: true }),
    });
    fc.assert(
      fc.property(position, ({ longitude, latitude }) => {
        // On the finer table's border the shift jumps, and no position may answer for the gap.
        fc.pre(Math.abs(longitude - 1) > 0.01 && Math.abs(latitude - 52.5) > 0.01 && Math.abs(latitude - 53) > 0.01);
        const back = gridShiftFromWgs84(made, longitude, latitude);
        fc.pre(back !== undefined);
        const [x, y] = gridShiftToWgs84(made, ...back) as [number, number];
        expect(Math.abs(x - longitude)).toBeLessThan(1e-11);
        expect(Math.abs(y - latitude)).toBeLessThan(1e-11);
      }),
    );
  });
});

describe("transform with a grid-shift file", () => {
  it("uses the file inside its cover", () => {
    const [x, y] = gridShiftFromWgs84(made, 1.716, 52.658) as [number, number];
    expect(transform("EPSG:4326", "EPSG:27700", 1.716, 52.658, made)).toEqual(
      transform("EPSG:4277", "EPSG:27700", x, y),
    );
    expect(transform("EPSG:4326", "EPSG:27700", 1.716, 52.658, made)).not.toEqual(
      transform("EPSG:4326", "EPSG:27700", 1.716, 52.658),
    );
  });

  it("falls back to the seven parameters outside it", () => {
    expect(transform("EPSG:4326", "EPSG:27700", -4, 57, made)).toEqual(transform("EPSG:4326", "EPSG:27700", -4, 57));
    expect(transform("EPSG:27700", "EPSG:4326", 250000, 800000, made)).toEqual(
      transform("EPSG:27700", "EPSG:4326", 250000, 800000),
    );
  });

  it("leaves other datums alone", () => {
    expect(transform("EPSG:4326", "EPSG:29903", -6.26, 53.35, made)).toEqual(
      transform("EPSG:4326", "EPSG:29903", -6.26, 53.35),
    );
  });
});

describe("files of this machine", () => {
  const french = "/usr/share/proj/ntf_r93.gsb";
  const frenchBytes = existsSync(french) ? [readFileSync(french)] : [];
  it.runIf(frenchBytes.length > 0)("the French file shifts Paris as PROJ does", () => {
    for (const bytes of frenchBytes) {
      const shift = readGridShift(bytes, { name: "ntf_r93.gsb", datum: "EPSG:4275", accuracy: 1 });
      const [x, y] = gridShiftToWgs84(shift, 2.3372, 48.8364) as [number, number];
      expect(x).toBeCloseTo(2.3364951075, DECIMALS);
      expect(y).toBeCloseTo(48.8363336112, DECIMALS);
    }
  });

  const british = ["/usr/share/proj", "/usr/local/share/proj", process.env["PROJ_DATA"] ?? ""]
    .map((place) => join(place, "OSTN15_NTv2_OSGBtoETRS.gsb"))
    .filter((path) => existsSync(path));
  it.runIf(british.length > 0)("the British file meets the 40 official test points to 5 cm", () => {
    const { points } = readReferenceFile<{ points: { lat: number; lon: number; E: number; N: number }[] }>(
      "ostn15-test-points.json",
    );
    for (const path of british) {
      const shift = readGridShift(readFileSync(path), { name: "OSTN15", datum: "EPSG:4277", accuracy: 0.1 });
      for (const { lon, lat, E, N } of points) {
        const [x, y] = transform("EPSG:4258", "EPSG:27700", lon, lat, shift);
        expect(Math.hypot(x - E, y - N)).toBeLessThan(0.05);
      }
    }
  });
});

describe("readGridShift refuses", () => {
  const bytes = makeNtv2(MADE_TABLES);
  it.each([
    ["an empty file", new Uint8Array(0), "no header of eleven records"],
    ["text", new TextEncoder().encode("latitude,longitude\n".repeat(40)), "no header of eleven records"],
    ["a file cut in its first table", bytes.slice(0, 600), "the file ends before"],
    ["a file cut before its second table", bytes.slice(0, 176 + 176 + 16 * 63 + 10), "no room for table 2 of 2"],
  ])("%s", (_, content, found) => {
    expect(() => readGridShift(content, ABOUT)).toThrow(Mistake);
    expect(() => readGridShift(content, ABOUT)).toThrow(found);
    expect(() => readGridShift(content, ABOUT)).toThrow("give the .gsb file as its publisher supplies it");
  });

  it("shifts in an unknown unit", () => {
    const other = makeNtv2(MADE_TABLES);
    other.set(new TextEncoder().encode("METRES  "), 3 * 16 + 8);
    expect(() => readGridShift(other, ABOUT)).toThrow("shifts in “METRES”");
  });
});

describe("examples", () => {
  it("readGridShift", () => expect(readGridShift(makeNtv2(MADE_TABLES.slice(0, 1)), ABOUT).tables).toHaveLength(1));
  it("gridShiftToWgs84", () => expect(gridShiftToWgs84(made, 30, 80)).toBeUndefined());
  it("gridShiftFromWgs84", () => expect(gridShiftFromWgs84(made, 30, 80)).toBeUndefined());
});
