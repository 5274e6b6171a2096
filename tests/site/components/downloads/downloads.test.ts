import { describe, expect, it } from "vitest";
import { fates, recordsOf } from "../../../../src/site/components/downloads/fates.ts";
import { recipes } from "../../../../src/site/components/downloads/recipes.ts";
import { formatName, shelves } from "../../../../src/site/components/downloads/shelves.ts";

const rows = [
  { source: "b", status: "not used", reason: "duplicate", records: 4 },
  { source: "a", status: "used", reason: "as published", records: 90 },
  { source: "b", status: "used", reason: "as published", records: 10 },
  { source: "a", status: "used", reason: "shown at 10 km", records: 200 },
] as const;

describe("fates", () => {
  it("adds the sources up and loses no record", () => {
    const made = fates(rows);
    expect(made).toEqual([
      { status: "used", reason: "shown at 10 km", records: 200 },
      { status: "used", reason: "as published", records: 100 },
      { status: "not used", reason: "duplicate", records: 4 },
    ]);
    expect(made.reduce((sum, { records }) => sum + records, 0)).toBe(
      rows.reduce((sum, { records }) => sum + records, 0),
    );
    expect([recordsOf(rows, "used"), recordsOf(rows, "held")]).toEqual([300, 0]);
  });
});

describe("recipes", () => {
  it("keep the square NA in both languages", () => {
    const { r, python } = recipes("squares.csv", "invented-red-tailed");
    expect(r).toContain('na.strings = ""');
    expect(python).toContain("keep_default_na=False");
    expect(python).toContain('squares["taxon_id"] == "invented-red-tailed"');
    expect(recipes("taxa/species-squares.csv", undefined).r).toBe(
      'species_squares <- read.csv("taxa/species-squares.csv", na.strings = "")',
    );
  });
});

describe("shelves", () => {
  const file = (table: string, path: string, format: string) => ({
    table,
    path,
    title: table,
    format,
    rows: 1,
    bytes: 1,
    sha256: "",
    fields: [],
  });
  it("puts the formats of a table together and folders apart", () => {
    const files = [
      file("a", "a.csv", "csv"),
      file("a", "a.parquet", "parquet"),
      file("b", "b.csv", "csv"),
      file("a", "species/x.csv", "csv"),
    ];
    const { tables, folders } = shelves(files);
    expect(tables.map((shelf) => shelf.files.map(({ path }) => path))).toEqual([["a.csv", "a.parquet"], ["b.csv"]]);
    expect(folders.map(([folder, inside]) => [folder, inside.length])).toEqual([["species", 1]]);
    expect(["geojson", "GeoPackage", "csv"].map(formatName)).toEqual(["GeoJSON", "GeoPackage", "CSV"]);
  });
});
