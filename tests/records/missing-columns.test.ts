import { describe, expect, it } from "vitest";
import { mapColumns } from "../../src/records/column-mapping.ts";
import { missingColumns } from "../../src/records/missing-columns.ts";

const said = (headers: string[], constants = {}) =>
  missingColumns("a.csv", mapColumns(headers, {}), constants).map(({ field, wayOut }) => [field, wayOut]);

describe("a file without a column for the name, the date or the place", () => {
  it("is told once, with the line to write for the header that looks like it", () => {
    expect(said(["Species", "Grid Ref", "Date", "Recorder"])).toEqual([
      ["scientificName", "write columns: { scientificName: Species } in the source, if that is it"],
      ["eventDate", "write columns: { eventDate: Date } in the source, if that is it"],
    ]);
  });

  it("is told what to map where no header looks like it", () => {
    expect(said(["scientificName", "eventDate", "A"])).toEqual([
      ["gridReference", "map the column that does: columns: { gridReference: its header } in the source"],
    ]);
  });

  it("needs none for what a constant of the source gives, nor for what another field can say", () => {
    expect(said(["scientificName", "decimalLatitude", "decimalLongitude"], { eventDate: "2020" })).toEqual([]);
    expect(said(["scientificName", "year", "easting", "northing"])).toEqual([]);
  });
});
