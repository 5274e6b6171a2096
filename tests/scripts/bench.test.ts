import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import Papa from "papaparse";
import { expect, test } from "vitest";
import { inventNames, inventRecords, readLand } from "../../scripts/bench/invent-records.ts";
import { isRefusal } from "../../src/grids/grid.ts";
import { gridNamed } from "../../src/grids/index.ts";
import { readReference } from "../../src/grids/reference.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const LAND = readLand(fileURLToPath(new URL("../../content/land-squares.csv", import.meta.url)));
const NAMES = inventNames(50);

function invented(seed: number): string {
  const path = join(makeTemporaryFolder(), "records.csv");
  inventRecords(path, { records: 2_000, names: NAMES, land: LAND, seed });
  return readFileSync(path, "utf8");
}

test("a seed gives the same bytes, another seed others", () => {
  expect(invented(1)).toBe(invented(1));
  expect(invented(1)).not.toBe(invented(2));
});

test("as many records as asked for, each at a place the grids or the globe know", () => {
  const { data, errors } = Papa.parse<Record<string, string>>(invented(1), { header: true, skipEmptyLines: true });
  expect(errors).toEqual([]);
  expect(data).toHaveLength(2_000);
  expect(new Set(data.map((row) => row["occurrenceID"])).size).toBe(2_000);
  const grids = (["british", "irish", "channel-islands"] as const).map((id) => gridNamed(id));
  for (const { gridReference = "", decimalLatitude = "", decimalLongitude = "" } of data) {
    const named = gridReference !== "" && !isRefusal(readReference(gridReference, grids));
    // Britain, Ireland and the Channel Islands lie between 49° and 61° N and between 11° W and 2° E.
    const [latitude, longitude] = [Number(decimalLatitude), Number(decimalLongitude)];
    const pointed = latitude > 49 && latitude < 61 && longitude > -11 && longitude < 2;
    expect(named || pointed, `${gridReference} ${decimalLatitude} ${decimalLongitude}`).toBe(true);
  }
});

test("invented names are all different", () => {
  expect(new Set(inventNames(5_000)).size).toBe(5_000);
});
