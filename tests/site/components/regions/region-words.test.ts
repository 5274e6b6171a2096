import { describe, expect, it } from "vitest";
import type { RegionSummary } from "../../../../src/publishing/contracts.ts";
import {
  layerName,
  notAssigned,
  regionSentence,
  squaresInWords,
} from "../../../../src/site/components/regions/region-words.ts";

const REGION: RegionSummary = {
  ...{ field: "county", region_id: "north", slug: "north", name: "North", code: "", territory: "" },
  ...{ records: 812, records_stated: 40, taxa: 3, hectads: 51, tetrads: 120, first_year: 1975, last_year: 2024 },
  ...{ land_hectads_inside: 62, land_hectads_boundary: 31 },
};

describe("regions in words", () => {
  it("say what was recorded, and that nothing recorded says nothing", () => {
    expect(regionSentence(REGION)).toBe("Three species in 812 records, 1975 to 2024.");
    expect(regionSentence({ ...REGION, records: 0, first_year: null, last_year: null })).toBe(
      "No record is assigned to this region. That says nothing about what lives here.",
    );
    expect(squaresInWords(REGION)).toBe("62 in this region alone, 31 shared with another");
  });

  it("say what is not assigned, and why", () => {
    expect(notAssigned({ records: 31, boundary: 20, outside: 11, no_square: 0 })).toBe(
      "**31 records** are not assigned: 20 of squares that touch several regions and 11 of squares in none.",
    );
    expect(notAssigned({ records: 1, boundary: 1, outside: 0, no_square: 0 })).toBe(
      "**1 record** is not assigned: 1 of squares that touch several regions.",
    );
    expect(notAssigned({ records: 0, boundary: 0, outside: 0, no_square: 0 })).toBe(
      "Every record is assigned to a region.",
    );
  });

  it("name a layer only where there are several", () => {
    expect([layerName("county", 1), layerName("county", 2), layerName("viceCounty", 2)]).toEqual([
      "Regions",
      "Counties",
      "Vice-counties",
    ]);
  });
});
