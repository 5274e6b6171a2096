import { expect, it } from "vitest";
import type { SiteRow } from "../../src/scheme/sites-file.ts";
import { interpret } from "./interpreting.ts";
import { useDatabase } from "./reading.ts";

const database = useDatabase();
const SITE: SiteRow = {
  name: "Long Mead",
  gridReference: "",
  decimalLatitude: "",
  decimalLongitude: "",
  uncertainty_m: 1_500,
  note: "",
  row: 2,
};

/** Place of the visit of each row: grid reference, locality. */
async function visits(rows: readonly (readonly [string, string])[], sites: SiteRow[] = []) {
  const lines = rows.map(([place, locality]) => `Bombus pratorum,2015-04-03,${place},${locality}`);
  const walks = ["scientificName,eventDate,gridReference,locality", ...lines].join("\n");
  await interpret(database(), { walks }, { sites });
  return database().rows<{ visit_place: string }>("SELECT visit_place FROM records ORDER BY record_no");
}

it("takes the kilometre of a place that is known that well, and a coarser place as it is", async () => {
  const found = await visits([
    ["SP545055", "Long Mead"],
    ["SP5405", ""],
    ["SP50", ""],
  ]);
  expect(found.map(({ visit_place }) => visit_place)).toEqual(["SP5405", "SP5405", "SP50"]);
});

it("takes a named site for the place of a visit, by locality or label point, where the record is known no less well", async () => {
  const rows = [
    ["SP545055", " LONG mead"],
    ["SP5506", "Long Mead"],
    ["SP50", "Long Mead"],
    ["SP545055", ""],
  ] as const;
  const named = await visits(rows, [SITE]);
  expect(named.map(({ visit_place }) => visit_place)).toEqual(["site long mead", "site long mead", "SP50", "SP5405"]);
  const marked = await visits(rows, [{ ...SITE, gridReference: "SP545055" }]);
  expect(marked[3]?.visit_place).toBe("site long mead");
  const nameless = await visits(rows, [{ ...SITE, name: "", gridReference: "SP545055" }]);
  expect(nameless.map(({ visit_place }) => visit_place)).toEqual(["site SP545055", "SP5506", "SP50", "site SP545055"]);
});
