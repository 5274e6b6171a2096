import { describe, expect, it } from "vitest";
import { mapColumns } from "../../src/records/column-mapping.ts";

const fieldsOf = (headers: readonly string[], own = {}) => Object.fromEntries(mapColumns(headers, own).columns);

describe("headers", () => {
  it("are Darwin Core terms, with or without prefix and in any case", () => {
    expect(
      fieldsOf([
        "occurrenceID",
        "dwc:eventDate",
        "SCIENTIFICNAME",
        "http://rs.tdwg.org/dwc/terms/recordedBy",
        "dwc_year",
        " month ",
      ]),
    ).toEqual({
      occurrenceID: 0,
      eventDate: 1,
      scientificName: 2,
      recordedBy: 3,
      year: 4,
      month: 5,
    });
  });

  it("may be what people call a grid reference, easting and northing", () => {
    expect(fieldsOf(["Grid Reference", "X", "Northings"])).toEqual({ gridReference: 0, easting: 1, northing: 2 });
  });

  it("are first those the settings name, and a header fills one field only", () => {
    expect(fieldsOf(["Art", "scientificName", "date"], { scientificName: "Art", eventDate: "Date" })).toEqual({
      scientificName: 0,
      eventDate: 2,
    });
  });

  it("that fill a field again, fill none, or are missing, are told", () => {
    expect(mapColumns(["year", "YEAR", "weather"], { locality: "Site" })).toMatchObject({
      repeated: ["YEAR"],
      unknown: ["weather"],
      missing: ["Site"],
    });
  });
});
