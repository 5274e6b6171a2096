import { describe, expect, it } from "vitest";
import type { DateFormat } from "../../src/dates/date-part.ts";
import { proposeColumns, type ValueJudge } from "../../src/records/propose-columns.ts";
import type { RecordField } from "../../src/scheme/settings.ts";

/** Rules simple enough to see through: two names, references of one or two letters and figures, dates by their separators. */
const JUDGE: ValueJudge = {
  isName: (text) => /^Bombus (?:pratorum|lucorum)$/.test(text),
  isReference: (text) => /^[A-Z]{1,2}\d*$/.test(text),
  isDate(text: string, format: DateFormat) {
    if (/^\d{4}(?:-\d\d-\d\d)?$/.test(text)) return true;
    const [, first = 0, second = 0] = (/^(\d+)\/(\d+)\/\d{4}$/.exec(text) ?? []).map(Number);
    return (
      (format === "day-first" && second > 0 && second <= 12) || (format === "month-first" && first > 0 && first <= 12)
    );
  },
};

function proposed(columns: Record<string, string[]>, known: RecordField[] = []) {
  const unmapped = Object.entries(columns).map(([header, values]) => ({ header, values }));
  return Object.fromEntries(
    proposeColumns(unmapped, new Set(known), JUDGE).map(({ field, header }) => [header, field]),
  );
}

describe("columns that are not used", () => {
  it("are proposed by what stands in them, whatever their headers", () => {
    expect(
      proposed({
        A: ["Bombus pratorum", "Bombus lucorum"],
        B: ["2021-05-03", "2021-05-04"],
        C: ["TQ3877", "SU12"],
        D: ["sun", "rain"],
      }),
    ).toEqual({ A: "scientificName", B: "eventDate", C: "gridReference" });
  });

  it("are proposed by their headers where those tell, in several languages, and the values do not contradict", () => {
    expect(
      proposed({
        Art: ["Andrena fulva"],
        Fundort: ["Long Lea"],
        Beobachter: ["nobody"],
        Breite: ["51,47", "52"],
        Lengtegraad: ["-0.1"],
        Aantal: ["2"],
        Bemerkungen: [],
      }),
    ).toEqual({
      Art: "scientificName",
      Fundort: "locality",
      Beobachter: "recordedBy",
      Breite: "decimalLatitude",
      Lengtegraad: "decimalLongitude",
      Aantal: "individualCount",
      Bemerkungen: "occurrenceRemarks",
    });
    expect(proposed({ Latitude: ["north"], Year: ["12"], Month: ["2021"], Species: ["17"], Date: ["never"] })).toEqual(
      {},
    );
  });

  it("give the reasons, and the order of day and month where only one reads the dates", () => {
    const [date] = proposeColumns([{ header: "Date", values: ["13/5/2021", "3/5/2021"] }], new Set(), JUDGE);
    expect(date).toEqual({
      field: "eventDate",
      header: "Date",
      why: "2 of 2 values are dates",
      dateFormat: "day-first",
    });
    const [either] = proposeColumns([{ header: "Date", values: ["3/5/2021"] }], new Set(), JUDGE);
    expect(either).toEqual({
      field: "eventDate",
      header: "Date",
      why: "1 of 1 values are dates, day first or month first: say which in date_format",
    });
  });

  it("are not proposed for a field that has a column, or twice", () => {
    expect(proposed({ Species: ["Bombus pratorum"] }, ["scientificName"])).toEqual({});
    expect(proposed({ Name: ["Bombus"], Species: ["Bombus pratorum"] })).toEqual({ Species: "scientificName" });
    expect(proposed({ Lat: ["51.5"], Grid: ["TQ38"] })).toEqual({ Grid: "gridReference" });
    expect(proposed({ Year: ["2021"], Date: ["2021-05-03"] })).toEqual({ Date: "eventDate" });
  });

  // H1 to H40 are the vice-counties of Ireland, and H10 to H40 hectads of the Irish Grid as well.
  it("that name regions are never taken for grid references", () => {
    const irish = Array.from({ length: 40 }, (_, index) => `H${index + 1}`);
    for (const header of ["VC", "Vice-county", "vice_county", "v.c.", "County", "Region", "Where", "Code", "Grid"])
      expect(Object.values(proposed({ [header]: irish }))).not.toContain("gridReference");
    for (const header of ["VC", "Region", "Code"])
      expect(Object.values(proposed({ [header]: ["H10", "H39"] }))).not.toContain("gridReference");
    expect(Object.values(proposed({ Place: ["SE", "NW"], Vc: ["South Devon"] }))).not.toContain("gridReference");
    expect(proposed({ VC: irish })).toEqual({ VC: "viceCounty" });
    expect(proposed({ Grid: ["H39", "C12"] })).toEqual({ Grid: "gridReference" });
  });

  it("with numbers alone are no dates without a header that says so", () => {
    expect(proposed({ Height: ["1999", "2021"] })).toEqual({});
    expect(proposed({ Date: ["1999", "2021"] })).toEqual({ Date: "eventDate" });
  });
});
