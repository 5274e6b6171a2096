import { expect, it } from "vitest";
import { useDatabase } from "../../records/reading.ts";
import { review } from "../reviewing.ts";

const database = useDatabase();
const HEADER = "occurrenceID,scientificName,eventDate,gridReference,license";
const row = (id: string, license: string) => `${id},Bombus pratorum,2011-07-12,SP5006,${license}`;

async function statuses(rows: readonly string[], licence = "CC-BY-4.0", own = "") {
  const { records, findings } = await review(
    database(),
    { walks: [HEADER, ...rows].join("\n") },
    { sources: { walks: { licence: own } }, more: { licence } },
  );
  return [
    records.map(({ reason }) => reason),
    findings
      .filter(({ check_name }) => check_name.startsWith("licence"))
      .map(({ row: at, check_name }) => `${at}: ${check_name}`),
  ];
}

it("holds records whose licence asks for what the atlas's does not keep", async () => {
  expect(await statuses([row("a1", "CC-BY-NC-4.0"), row("a2", "CC0-1.0"), row("a3", "")])).toEqual([
    ["licence_stricter", "used", "used"],
    ["2: licence_stricter"],
  ]);
  expect((await statuses([row("a1", "CC-BY-NC-4.0")], "CC-BY-NC-4.0"))[0]).toEqual(["used"]);
});

it("takes the source's licence where a record states none", async () => {
  expect((await statuses([row("a1", ""), row("a2", "CC-BY-4.0")], "CC-BY-4.0", "CC-BY-NC-4.0"))[0]).toEqual([
    "licence_stricter",
    "used",
  ]);
});

it("asks about a licence it cannot read, and holds nothing for it", async () => {
  expect(await statuses([row("a1", "see website")])).toEqual([["used"], ["2: licence_unknown"]]);
});
