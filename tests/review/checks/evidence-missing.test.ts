import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { type Database, openDatabase } from "../../../src/engine/database.ts";
import { makeTemporaryFolder } from "../../support/temporary-folder.ts";
import { review } from "../reviewing.ts";

const HEADER =
  "occurrenceID,scientificName,eventDate,gridReference,recordedBy,caste,evidence,identificationVerificationStatus";

let database: Database;
beforeEach(async () => {
  database = await openDatabase({ spillFolder: join(makeTemporaryFolder(), "spill") });
});
afterEach(() => database.close());

async function asked(rows: readonly string[], evidence: object = {}) {
  const { findings } = await review(
    database,
    { walks: [HEADER, ...rows].join("\n") },
    { more: { checks: { evidence } } },
  );
  return findings.filter(({ check_name }) => check_name === "evidence_missing");
}

const MALE = "a1,Bombus bohemicus,2011-07-12,SP5006,Ann,male,photograph,";

it("notes what only a specimen settles, in the castes it settles, where a look-alike was reported near in that decade", async () => {
  // The demonstration's characters: males of bohemicus and vestalis differ in the antenna, seen on a specimen; its account names vestalis.
  const found = await asked([MALE, "a2,Bombus vestalis,2012-06-01,SP6106,Ben,female,,"]);
  expect(found).toMatchObject([
    {
      row: 2,
      severity: "note",
      message:
        "rests on a photograph; Bombus vestalis was reported within 15 km in the same decade, and only a specimen tells them apart",
      way_out: "a specimen of the antenna: 3 equal to 5, not 3 shorter than 5 as in Bombus vestalis",
      subject: "Bombus bohemicus in SP50",
    },
  ]);
  expect(await asked([MALE, "a2,Bombus vestalis,2012-06-01,SP9006,Ben,female,,"])).toEqual([]);
  expect(await asked([MALE, "a2,Bombus vestalis,1992-06-01,SP6106,Ben,female,,"])).toEqual([]);
  expect(await asked([MALE.replace("male", "female"), "a2,Bombus vestalis,2012-06-01,SP6106,Ben,female,,"])).toEqual(
    [],
  );
  expect(
    await asked([MALE.replace("photograph", "specimen"), "a2,Bombus vestalis,2012-06-01,SP6106,Ben,female,,"]),
  ).toEqual([]);
});

it("asks for what the scheme lists, by taxon, caste and territory, and not of what is confirmed", async () => {
  const rows = [
    "a1,Bombus humilis,2011-07-12,SP5006,Ann,queen,,",
    "a2,Bombus humilis,2011-07-12,SP5006,Ann,worker,,",
    "a3,Bombus humilis,2011-07-12,SP5006,Ann,queen,photograph,",
    "a4,Bombus humilis,2011-07-12,N9040,Ann,queen,,",
    "a5,Bombus humilis,2011-07-12,SP5006,Ann,queen,,checked",
  ];
  const needed = [{ taxa: ["invented-humilis"], castes: ["queen"], territories: ["britain"], least: "photograph" }];
  const found = await asked(rows, { needed, confirmed_words: ["checked"] });
  expect(found.map(({ row }) => row)).toEqual([2]);
  expect(found[0]).toMatchObject({
    severity: "ask",
    message: "rests on sight; for this taxon the scheme asks for a photograph",
  });
});
