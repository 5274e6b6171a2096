import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type Database, openDatabase } from "../../src/engine/database.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";
import { review } from "./reviewing.ts";

const HEADER = "occurrenceID,scientificName,eventDate,gridReference,recordedBy,caste";
const SOUND = "a1,Bombus terrestris,2011-07-12,SP5006,Ann,queen";
/** A cuckoo has no workers: held until somebody rules. */
const HELD = "a2,Bombus vestalis,2011-07-12,SP5006,Ann,worker";

let database: Database;
beforeEach(async () => {
  database = await openDatabase({ spillFolder: join(makeTemporaryFolder(), "spill") });
});
afterEach(() => database.close());

async function statusOf(rows: readonly string[], decisions: object[], header = HEADER) {
  const { records, findings } = await review(database, { walks: [header, ...rows].join("\n") }, { decisions });
  return { statuses: records.map(({ status, reason }) => `${status}: ${reason}`), records, findings };
}

describe("reviewRecords", () => {
  it("use a held record, leave out and hold a used one", async () => {
    expect((await statusOf([SOUND, HELD], [])).statuses).toEqual(["used: used", "held: impossible_caste"]);
    const ruled = await statusOf(
      [SOUND, HELD],
      [
        { recordKey: "walks:a1", ruling: "leave out" },
        { recordKey: "walks:a2", ruling: "use" },
      ],
    );
    expect(ruled.statuses).toEqual(["not used: left_out", "used: used"]);
    expect(ruled.findings.filter(({ settled }) => !settled)).toEqual([]);
    expect((await statusOf([SOUND], [{ recordKey: "walks:a1", ruling: "hold" }])).statuses).toEqual([
      "held: held_by_ruling",
    ]);
  });

  it("correct a record before it is interpreted, and take the corrected place for all that was said of it", async () => {
    const { records } = await statusOf(
      ["a1,Bombus terrestris,2011-02-30,,Ann,queen,51.75,-1.25"],
      [
        {
          recordKey: "walks:a1",
          ruling: "correct",
          value: "gridReference=SP40; eventDate=2011-07-12; caste=worker; scientificName=Bombus pascuorum",
        },
      ],
      `${HEADER},decimalLatitude,decimalLongitude`,
    );
    // SP40 is a 10 km square: it supports that and no 2 km square.
    expect(records[0]).toMatchObject({
      hectad: "SP40",
      tetrad: null,
      taxon_id: "invented-pascuorum",
      castes: "worker",
    });
    // 2011-07-12 is day 15,167 from 1970-01-01: Date.UTC(2011, 6, 12) / 86,400,000.
    expect(records[0]?.first_day).toBe(Date.UTC(2011, 6, 12) / 86_400_000);
  });

  it("are proposed where one correction would make a record good, and follow the proposal when it is ruled", async () => {
    const header = `${HEADER},decimalLatitude,decimalLongitude,coordinateUncertaintyInMeters`;
    const rows = [
      "a1,Bombus terestris,2011-07-12,SP5006,Ann,,,,",
      // Oxford stands near 51.75 N 1.25 W: exchanged, and with its sign lost, in the North Sea east of Norfolk.
      "a2,Bombus terrestris,2011-07-12,,Ann,,-1.25000,51.75000,10",
      "a3,Bombus terrestris,2011-07-12,,Ann,,52.25798,3.93559,10",
    ];
    const asked = await statusOf(rows, [], header);
    expect(asked.findings.map(({ proposal }) => proposal)).toEqual([
      "scientificName=Bombus terrestris",
      "decimalLatitude=51.75000; decimalLongitude=-1.25000",
      "decimalLatitude=52.25798; decimalLongitude=-3.93559",
    ]);
    const decisions = asked.findings.map(({ proposal }, index) => ({
      recordKey: `walks:a${index + 1}`,
      ruling: "correct",
      value: proposal,
    }));
    const { statuses, records } = await statusOf(rows, decisions, header);
    expect(statuses).toEqual(["used: used", "used: used", "used: used"]);
    // Oxford is in SP50, by the letters of the National Grid; 52.25798 N 3.93559 W is SN 6 6 (cs2cs, EPSG:4326 to 27700).
    expect(records[1]?.hectad).toBe("SP50");
    expect(records[2]?.hectad?.slice(0, 2)).toBe("SN");
  });

  it("keep an identification that cannot be decided out of the atlas", async () => {
    const { statuses } = await statusOf(
      [SOUND],
      [{ recordKey: "walks:a1", ruling: "identify", identification: "cannot be decided" }],
    );
    expect(statuses).toEqual(["not used: identification_undecided"]);
  });

  it("outlive another order of rows and other columns, and hold for a record without an id by what it says", async () => {
    const decisions = [{ recordKey: "walks:a2", ruling: "use" }];
    expect((await statusOf([HELD, SOUND], decisions)).statuses).toEqual(["used: used", "used: used"]);
    await statusOf([HELD.replace("a2", "")], []);
    const [{ record_key: key } = { record_key: "" }] = await database.rows<{ record_key: string }>(
      "SELECT record_key FROM record_texts",
    );
    expect(key).toMatch(/^walks:#[0-9a-f]{16}$/);
    const again = await statusOf([SOUND, HELD.replace("a2", "")], [{ recordKey: key, ruling: "use" }]);
    expect(again.statuses).toEqual(["used: used", "used: used"]);
  });

  it("do not hold for a record that has changed since: it is held and shown with the difference", async () => {
    const { statuses, findings } = await statusOf(
      [SOUND],
      [
        {
          recordKey: "walks:a1",
          ruling: "use",
          saidName: "Bombus terrestris",
          saidDate: "2011-07-13",
          saidPlace: "SP5006",
          saidKind: "queen",
        },
      ],
    );
    expect(statuses).toEqual(["held: decision_record_changed"]);
    expect(findings.find(({ check_name }) => check_name === "decision_record_changed")?.message).toContain(
      "date “2011-07-13” is now “2011-07-12”",
    );
  });

  it("that are only opinions settle nothing, and are asked about until somebody rules", async () => {
    const { statuses, findings } = await statusOf(
      [HELD],
      [{ recordKey: "walks:a2", ruling: "opinion", value: "use", who: "B", when: "2026-01-02T10:00:00Z" }],
    );
    expect(statuses).toEqual(["held: impossible_caste"]);
    expect(findings.filter(({ settled }) => !settled).map(({ check_name, message }) => [check_name, message])).toEqual([
      ["impossible_caste", "is a caste this taxon does not have"],
      ["opinion_waits", "others say: use (B, 2026-01-02)"],
    ]);
  });

  it("stay in force while an opinion waits, and an opinion on a record that has changed holds nothing", async () => {
    const opinion = { ruling: "opinion", value: "leave out", saidName: "Bombus humilis" };
    const ruled = [
      { recordKey: "walks:a2", ruling: "use" },
      { ...opinion, recordKey: "walks:a2", saidName: "" },
    ];
    expect((await statusOf([HELD], ruled)).statuses).toEqual(["used: used"]);
    expect((await statusOf([SOUND], [{ ...opinion, recordKey: "walks:a1" }])).statuses).toEqual(["used: used"]);
  });

  it("whose record is not there any more are listed", async () => {
    await statusOf([SOUND], [{ recordKey: "walks:a9", ruling: "use", saidName: "Bombus humilis", saidPlace: "SP50" }]);
    expect(await database.rows("SELECT * FROM decisions_without_record")).toEqual([
      { record_key: "walks:a9", said: "Bombus humilis, SP50" },
    ]);
  });

  it("follow the settings on how much a check's findings matter", async () => {
    const { records } = await review(
      database,
      { walks: `${HEADER}\na1,Bombus terrestris,12 July 2011,SP5006,Ann,queen` },
      { more: { checks: { severity: { date_event_date_not_iso: "blocks" } } } },
    );
    expect(records[0]).toMatchObject({ status: "held", reason: "date_event_date_not_iso" });
  });
});
