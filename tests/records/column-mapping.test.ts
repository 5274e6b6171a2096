import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { fieldOf, mapColumns } from "../../src/records/column-mapping.ts";
import { RECORD_FIELDS } from "../../src/scheme/settings.ts";

/** The TDWG term list beside the checkout: too large and not ours to keep in it. */
const TERM_LIST = join(import.meta.dirname, "../../..", "shared/bdq/dwc-terms.csv");

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

  // Of the term list of Darwin Core (Darwin Core Maintenance Group, http://rs.tdwg.org/dwc/doc/list/, CC BY 4.0).
  it.each([
    ["http://rs.tdwg.org/dwc/terms/recordedBy", "recordedBy"],
    ["http://purl.org/dc/terms/license", "license"],
    ["http://purl.org/dc/elements/1.1/type", "type"],
    ["dwc:coordinateUncertaintyInMeters", "coordinateUncertaintyInMeters"],
    ["dcterms:license", "license"],
    ["eco:isTaxonomicScopeFullyReported", "isTaxonomicScopeFullyReported"],
    ["Scientific Name", "scientificName"],
    ["decimal.latitude", "decimalLatitude"],
    ["START_DAY_OF_YEAR", "startDayOfYear"],
    ["http://rs.tdwg.org/dwc/iri/recordedBy", undefined],
    ["dwciri:recordedBy", undefined],
    ["Exported: year", undefined],
    ["12/year", undefined],
  ])("such as %j is %j", (header, field) => {
    expect(fieldOf(header)).toBe(field);
  });

  // Terms of the schemas before 2009, by the history of terms in the list above.
  it.each([
    ["Collector", "recordedBy"],
    ["YearCollected", "year"],
    ["dwc:VerbatimCollectingDate", "verbatimEventDate"],
    ["HorizontalDatum", "geodeticDatum"],
    ["http://rs.tdwg.org/dwc/dwcore/GlobalUniqueIdentifier", "occurrenceID"],
    ["EarliestDateCollected", undefined],
  ])("of before, such as %j, is %j", (header, field) => {
    expect(fieldOf(header)).toBe(field);
  });

  it("that are terms no field is made of are known and not used", () => {
    expect(
      mapColumns(["family", "dwc:organismQuantity", "eco:inventoryTypes", "dwciri:sex", "weather"], {}),
    ).toMatchObject({
      unused: ["family", "dwc:organismQuantity", "eco:inventoryTypes", "dwciri:sex"],
      unknown: ["weather"],
    });
  });

  it("may be meant by their number", () => {
    expect(fieldsOf(["#1", "#2", "#3"], { scientificName: "#2", eventDate: "# 3", locality: "#4" })).toEqual({
      scientificName: 1,
    });
    expect(mapColumns(["a", "b"], { scientificName: "#2", locality: "#3" })).toMatchObject({ missing: ["#3"] });
    expect(fieldsOf(["a", "#1"], { locality: "#1" })).toEqual({ locality: 1 });
  });

  it("are those of the list, in every way it can be written", () => {
    if (!existsSync(TERM_LIST)) {
      console.log(`the TDWG term list is not beside the checkout (${TERM_LIST}): its terms were not tried`);
      return;
    }
    const [, ...rows] = readFileSync(TERM_LIST, "utf8").trim().split("\n");
    const terms = rows
      .map((row) => row.split(","))
      .map(([term = "", namespace = "", , , kind]) => ({ term, namespace, kind }));
    const columns = terms.filter(({ namespace, kind }) => kind === "property" && !namespace.endsWith("/iri/"));
    expect(columns.length).toBeGreaterThan(200);
    for (const { term, namespace } of columns) {
      const expected = (RECORD_FIELDS as readonly string[]).includes(term) ? term : undefined;
      for (const header of [term, term.toUpperCase(), `dwc:${term}`, namespace + term, ` dwc_${term} `, `"${term}"`]) {
        expect([header, fieldOf(header)]).toEqual([header, expected]);
        expect([header, mapColumns([header], {}).unknown]).toEqual([header, []]);
      }
    }
    for (const { term, namespace } of terms.filter((one) => one.namespace.endsWith("/iri/")))
      expect(mapColumns([namespace + term, `dwciri:${term}`], {})).toMatchObject({
        unknown: [],
        unused: [namespace + term, `dwciri:${term}`],
      });
  });
});
