import { expect, it } from "vitest";
import { statusesOf } from "../../src/publishing/statuses.ts";
import type { Scheme } from "../../src/scheme/scheme.ts";

const ROW = { list: "A list", category: "Of concern", jurisdiction: "An area", citation: "A book", url: "" };
const scheme = {
  statuses: [
    { ...ROW, taxonID: "invented-a", year: 2014 },
    { ...ROW, taxonID: "invented-a", year: 2015 },
    { ...ROW, taxonID: "invented-b", year: 2024 },
  ],
  settings: { status_years: 10, edition: { id: "2025.1", date: "2025-03-01" } },
} as unknown as Scheme;

it("says of a list that it is old once it is older than the setting, and not at it", () => {
  expect(statusesOf("invented-a", scheme).map(({ year, old }) => [year, old])).toEqual([
    [2014, true],
    [2015, false],
  ]);
  expect(statusesOf("invented-c", scheme)).toEqual([]);
});
