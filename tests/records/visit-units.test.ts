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

/** Place and party of the visit of each row: grid reference, locality, recorder. */
async function visits(rows: readonly (readonly [string, string, string])[], sites: SiteRow[] = []) {
  const lines = rows.map(([place, locality, people]) => `Bombus pratorum,2015-04-03,${place},${locality},"${people}"`);
  const walks = ["scientificName,eventDate,gridReference,locality,recordedBy", ...lines].join("\n");
  await interpret(database(), { walks }, { sites });
  return database().rows<{ visit_place: string; recorder: string }>(
    "SELECT visit_place, recorder FROM records ORDER BY record_no",
  );
}

it("takes the kilometre of a place that is known that well, and a coarser place as it is", async () => {
  const found = await visits([
    ["SP545055", "Long Mead", ""],
    ["SP5405", "", ""],
    ["SP50", "", ""],
  ]);
  expect(found.map(({ visit_place }) => visit_place)).toEqual(["SP5405", "SP5405", "SP50"]);
});

it("takes a named site for the place of a visit, by locality or label point, where the record is known no less well", async () => {
  const rows = [
    ["SP545055", " LONG mead", ""],
    ["SP5506", "Long Mead", ""],
    ["SP50", "Long Mead", ""],
    ["SP545055", "", ""],
  ] as const;
  const named = await visits(rows, [SITE]);
  expect(named.map(({ visit_place }) => visit_place)).toEqual(["site long mead", "site long mead", "SP50", "SP5405"]);
  const marked = await visits(rows, [{ ...SITE, gridReference: "SP545055" }]);
  expect(marked[3]?.visit_place).toBe("site long mead");
  const nameless = await visits(rows, [{ ...SITE, name: "", gridReference: "SP545055" }]);
  expect(nameless.map(({ visit_place }) => visit_place)).toEqual(["site SP545055", "SP5506", "SP50", "site SP545055"]);
});

it("knows a party by its people, in any order and spelling", async () => {
  const spellings = ["Ann Smith & Bo Jones", "Jones, Bo | SMITH, Ann", "bo jones; ann smith", "Ann Smith"];
  const found = await visits(spellings.map((people) => ["SP5405", "", people] as const));
  expect(found.map(({ recorder }) => recorder)).toEqual([
    "ann bo jones smith",
    "ann bo jones smith",
    "ann bo jones smith",
    "ann smith",
  ]);
});
