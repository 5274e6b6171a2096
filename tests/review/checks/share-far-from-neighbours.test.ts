import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { type Database, openDatabase } from "../../../src/engine/database.ts";
import { makeTemporaryFolder } from "../../support/temporary-folder.ts";
import { review } from "../reviewing.ts";

const HEADER = "occurrenceID,scientificName,eventDate,gridReference,recordedBy";

let database: Database;
beforeEach(async () => {
  database = await openDatabase({ spillFolder: join(makeTemporaryFolder(), "spill") });
});
afterEach(() => database.close());

/** Records on the days of June and July, each in a 1 km square of its own row of squares. */
function records(name: string, count: number, recorder: string, square = "SP50"): string[] {
  return Array.from({ length: count }, (_, index) => {
    const date = `2012-0${6 + Math.floor((index % 60) / 30)}-${String((index % 30) + 1).padStart(2, "0")}`;
    const monad = `${square.slice(0, 3)}${index % 10}${square.slice(3)}${Math.floor(index / 60)}`;
    return `${recorder}-${name}-${index},Bombus ${name},${date},${monad},${recorder}`;
  });
}

async function asked(rows: readonly string[], shares: object = {}) {
  const { findings } = await review(
    database,
    { walks: [HEADER, ...rows].join("\n") },
    { more: { checks: { shares: { scarce_below: 0.2, ...shares } } } },
  );
  return findings.filter(({ check_name }) => check_name === "share_far_from_neighbours");
}

const OTHERS = ["Ben", "Cy", "Dee"].flatMap((recorder) => [
  ...records("pascuorum", 100, recorder),
  ...records("humilis", 1, recorder),
]);

it("asks once about all records of a scarce taxon by somebody who reports it far oftener than others there", async () => {
  const found = await asked([...OTHERS, ...records("pascuorum", 19, "Ann"), ...records("humilis", 41, "Ann")]);
  expect(found).toHaveLength(41);
  expect(new Set(found.map(({ subject }) => subject))).toEqual(new Set(["recorder ann: Bombus humilis"]));
  // Others: 3 of 303, 1 in 101.
  expect(found[0]?.message).toBe(
    "41 of 60 records by this recorder are Bombus humilis; of others’ records within 30 km in the same years 1 in 101",
  );
  expect(found[0]).toMatchObject({ severity: "ask", settled: false });
});

it("asks nothing where others report it as often, where few others were, and of a common taxon", async () => {
  const many = ["Ben", "Cy", "Dee"].flatMap((recorder) => [
    ...records("pascuorum", 60, recorder),
    ...records("humilis", 40, recorder),
  ]);
  expect(
    await asked([...many, ...records("pascuorum", 19, "Ann"), ...records("humilis", 41, "Ann")], { scarce_below: 0.9 }),
  ).toEqual([]);
  expect(
    await asked(
      [...records("pascuorum", 40, "Ben"), ...records("pascuorum", 19, "Ann"), ...records("humilis", 41, "Ann")],
      { scarce_below: 0.9 },
    ),
  ).toEqual([]);
  expect(
    await asked([...OTHERS, ...records("pascuorum", 19, "Ann"), ...records("humilis", 41, "Ann")], {
      scarce_below: 0.05,
    }),
  ).toEqual([]);
});
