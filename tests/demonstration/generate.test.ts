import { createHash } from "node:crypto";
import { readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ERROR_KINDS } from "../../scripts/demonstration/errors/spoil-rows.ts";
import { generateDemonstration, SOURCES } from "../../scripts/demonstration/generate.ts";
import { type GridId, isRefusal } from "../../src/grids/grid.ts";
import { gridNamed } from "../../src/grids/index.ts";
import { makeDemonstration, type ReadDemonstration } from "./made.ts";

const RECORDS = 15_000;
let made: ReadDemonstration;

beforeAll(() => {
  made = makeDemonstration({ seed: 7, records: RECORDS });
});

afterAll(() => {
  rmSync(made.folder, { recursive: true, force: true });
});

const spoilt = (): Set<string> => new Set(made.errors.map(({ file, row }) => `${file} ${row}`));
const everyRow = (): Record<string, string>[] => [...made.records.values()].flat();

/** Rows of a file without an error, each with what was truly seen. */
function soundRows(file: string): { written: Record<string, string>; seen: Record<string, string> }[] {
  const wrong = spoilt();
  return made.rows
    .filter((row) => row["file"] === file && !wrong.has(`${file} ${row["row"]}`))
    .map((seen) => ({
      seen,
      written: (made.records.get(file) ?? [])[Number(seen["row"]) - 2] as Record<string, string>,
    }));
}

function hashes(folder: string): Record<string, string> {
  const names = readdirSync(folder).filter((name) => name.endsWith(".csv"));
  return Object.fromEntries(
    names.map((name) => [
      name,
      createHash("sha256")
        .update(readFileSync(join(folder, name)))
        .digest("hex"),
    ]),
  );
}

describe("generateDemonstration", () => {
  it("does nothing the second time, and writes the same bytes where they are gone", () => {
    const [records, truth] = [join(made.folder, "records"), join(made.folder, "truth")];
    const before = { ...hashes(records), ...hashes(truth) };
    const options = { seed: 7, records: RECORDS, outFolder: records, truthFolder: truth };
    expect(generateDemonstration(options).isNew).toBe(false);
    for (const folder of [records, truth]) {
      for (const name of Object.keys(hashes(folder))) {
        writeFileSync(join(folder, name), "");
      }
    }
    expect(generateDemonstration(options).isNew).toBe(true);
    expect({ ...hashes(records), ...hashes(truth) }).toEqual(before);
    expect(Object.keys(before)).toHaveLength(SOURCES.length + 3);
  });

  it("writes about as many rows as asked", () => {
    expect(everyRow().length / RECORDS).toBeCloseTo(1, 1);
  });

  it("draws every sighting from the truth", () => {
    const letters = new Map(made.truth.map((row) => [squareOf(row, row["epoch"] as string), row["tetrads"] as string]));
    const sightings = made.rows.filter((row) => row["castes"] !== "");
    expect(sightings.length).toBeGreaterThan(0.9 * RECORDS);
    const strays = sightings.filter(
      (row) =>
        !letters.get(squareOf(row, epochOf(row["date"] as string)))?.includes((row["tetrad"] as string).slice(-1)),
    );
    expect(strays).toEqual([]);
  });

  it("has effort that grows three- to sixfold", () => {
    const count = (from: string, to: string): number =>
      made.rows.filter(({ date = "" }) => date >= from && date < to).length;
    const growth = count("2021", "2024") / count("1990", "1993");
    expect(growth).toBeGreaterThan(3);
    expect(growth).toBeLessThan(6);
  });
});

describe("the records", () => {
  it("name every row invented, and nobody by name", () => {
    const ids = SOURCES.flatMap(({ file, idColumn }) =>
      (made.records.get(file) ?? []).map((row) => row[idColumn] as string),
    );
    expect(ids.filter((id) => !/^invented-[a-z]+-\d{6}$/.test(id))).toEqual([]);
    const people = everyRow().map((row) => row["recordedBy"] ?? row["Recorder"] ?? "");
    expect(
      people.filter(
        (key) => key !== "" && !/^ ?invented[- ](recorder|class|collector|surveyor)[- ]\d{2,3}$/i.test(key),
      ),
    ).toEqual([]);
    const places = everyRow().map((row) => row["locality"] ?? row["Site"] ?? "");
    expect(places.filter((place) => place !== "" && !place.includes("(invented)"))).toEqual([]);
  });

  it("repeat an id only in the copy that came by another way", () => {
    const own = SOURCES.filter(({ id }) => id !== "portal-copy").flatMap(({ file, idColumn }) =>
      (made.records.get(file) ?? []).map((row) => row[idColumn]),
    );
    expect(new Set(own).size).toBe(own.length);
    const copies = (made.records.get("portal-copy.csv") ?? []).filter(
      (row) => row["occurrenceID"]?.startsWith("invented-portal") === false,
    );
    expect(copies.length).toBeGreaterThan(20);
    expect(copies.filter((row) => !own.includes(row["occurrenceID"]))).toEqual([]);
  });

  it("say of some walks by some recorders that nothing was left off", () => {
    const rows = made.records.get("walks.csv") ?? [];
    const declared = rows.filter((row) => row["isTaxonomicScopeFullyReported"] === "true");
    expect(declared.length / rows.length).toBeGreaterThan(0.2);
    expect(declared.length / rows.length).toBeLessThan(0.6);
    const recorders = (of: typeof rows) => new Set(of.map((row) => row["recordedBy"]?.toLowerCase())).size;
    expect(recorders(declared)).toBeLessThan(0.8 * recorders(rows));
  });

  it("mostly state no caste", () => {
    const castes = everyRow().map((row) => row["caste"] || row["Sex/stage"] || row["sex"] || "");
    const share = castes.filter((caste) => caste === "").length / castes.length;
    expect(share).toBeGreaterThan(0.55);
    expect(share).toBeLessThan(0.72);
  });

  it("have all their rows accounted for in the truth", () => {
    for (const [file, records] of made.records) {
      const told = made.rows.filter((row) => row["file"] === file);
      const { idColumn } = SOURCES.find((source) => source.file === file) as { idColumn: string };
      expect(
        told.map((row) => row["occurrence_id"]),
        file,
      ).toEqual(records.map((row) => row[idColumn]));
      expect(
        told.map((row) => Number(row["row"])),
        file,
      ).toEqual(records.map((_, i) => i + 2));
    }
    expect(made.rows).toHaveLength(everyRow().length);
  });

  it("hold every known kind of error, about one row in a hundred, at most one a row", () => {
    expect([...new Set(made.errors.map(({ kind }) => kind))].sort()).toEqual(
      ERROR_KINDS.map(({ kind }) => kind).sort(),
    );
    expect(made.errors.length / made.rows.length).toBeGreaterThan(0.008);
    expect(made.errors.length / made.rows.length).toBeLessThan(0.014);
    expect(spoilt().size).toBe(made.errors.length);
  });

  it("say something else than the truth where an error is listed", () => {
    for (const { file, row, field, right } of made.errors) {
      const record = (made.records.get(file as string) ?? [])[Number(row) - 2] as Record<string, string>;
      const cells =
        field === ""
          ? "a cell too many"
          : (field as string)
              .split("+")
              .map((column) => record[column])
              .join(" ");
      expect(cells, `${file} ${row}`).not.toBe(right);
      expect("__parsed_extra" in record, `${file} ${row}`).toBe(field === "");
    }
  });

  it("place a sound garden row in the square where the bee was", () => {
    for (const { written, seen } of soundRows("gardens.csv")) {
      const grid = gridNamed(gridOfTerritory(seen["territory"]));
      const square = grid.parse(written["gridReference"] as string);
      expect(
        isRefusal(square)
          ? square.refused
          : grid.format({ ...square, size: 2000, easting: even(square.easting), northing: even(square.northing) }),
      ).toBe(seen["tetrad"]);
    }
  });

  it("place a sound photograph in the square where the bee was, but for the fifth decimal", () => {
    const placed = soundRows("photographs.csv").map(({ written, seen }) => {
      const grid = gridNamed(gridOfTerritory(seen["territory"]));
      const square = grid.squareAt(
        grid.project(Number(written["decimalLongitude"]), Number(written["decimalLatitude"])),
        2000,
      );
      return square !== undefined && grid.format(square) === seen["tetrad"];
    });
    // Five decimals are about 1 m, so some 1 in 1,000 points may cross the side of a 2 km square.
    expect(placed.filter(Boolean).length / placed.length).toBeGreaterThan(0.995);
  });

  it("give a cuckoo no worker, but as an error", () => {
    const cuckoos = /vestalis|bohemicus|rupestris|barbutellus|campestris|sylvestris/;
    const castes = made.rows
      .filter(({ taxon_id }) => cuckoos.test(taxon_id as string))
      .map((row) => row["castes"] as string);
    expect(castes.length).toBeGreaterThan(100);
    expect(castes.filter((caste) => /worker|queen/.test(caste))).toEqual([]);
  });

  it("use the names and castes of the checklist, in whatever case and spacing", () => {
    const checklist = readFileSync(new URL("../../content/checklist.csv", import.meta.url), "utf8").toLowerCase();
    const misspelt = new Set(
      made.errors.filter(({ kind }) => kind === "misspelt-name").map(({ file, row }) => `${file} ${row}`),
    );
    const names = [...made.records].flatMap(([file, rows]) =>
      rows
        .filter((_, i) => !misspelt.has(`${file} ${i + 2}`))
        .map((row) => (row["scientificName"] ?? row["Species"] ?? "").trim()),
    );
    const known = [...new Set(names)].map((name) =>
      name
        .replace(/\s+/g, " ")
        .replace(/ \(.*\)$/, "")
        .toLowerCase(),
    );
    expect(known.filter((name) => !checklist.includes(name))).toEqual([]);
  });
});

function squareOf(row: Record<string, string>, epoch: string): string {
  return `${row["taxon_id"]} ${row["territory"]} ${row["hectad"]} ${epoch}`;
}

function epochOf(date: string): string {
  return date < "1990" ? "before 1990" : date < "2006" ? "1990–2005" : "2006–2024";
}

function gridOfTerritory(territory: string | undefined): GridId {
  return territory === "britain" ? "british" : territory === "ireland" ? "irish" : "channel-islands";
}

function even(metres: number): number {
  return Math.floor(metres / 2000) * 2000;
}
