import { describe, expect, it } from "vitest";
import { DecisionRow } from "../../src/scheme/decisions-file.ts";
import { decisionsInForce } from "../../src/scheme/decisions-in-force.ts";
import { interpret } from "./interpreting.ts";
import { useDatabase } from "./reading.ts";

const database = useDatabase();
const HEADER =
  "occurrenceID,catalogNumber,scientificName,eventDate,gridReference,decimalLatitude,decimalLongitude,coordinateUncertaintyInMeters,recordedBy,caste";

/** A row of one walk; what is not given is a record by Ann of 2011-07-12 in SP5006. */
function row(given: Record<string, string> = {}): string {
  const cells = {
    scientificName: "Bombus pratorum",
    eventDate: "2011-07-12",
    gridReference: given["decimalLatitude"] === undefined ? "SP5006" : "",
    recordedBy: "Ann",
    ...given,
  } as Record<string, string>;
  return HEADER.split(",")
    .map((column) => cells[column] ?? "")
    .join(",");
}

/** Reasons of the rows of two sources, in order. */
async function reasons(walks: string[], portal: string[], decisions: Partial<DecisionRow>[] = []) {
  const rows = decisions.map((decision, index) => DecisionRow.parse({ decisionID: `d${index}`, ...decision }));
  const { records, findings } = await interpret(
    database(),
    { walks: [HEADER, ...walks].join("\n"), portal: [HEADER, ...portal].join("\n") },
    {},
    decisionsInForce(rows),
  );
  return {
    walks: records.filter(({ source }) => source === "walks").map(({ reason }) => reason),
    portal: records.filter(({ source }) => source === "portal").map(({ reason }) => reason),
    asked: findings.filter(({ check_name }) => check_name === "same_id_other_record").length,
  };
}

describe("an id in two sources", () => {
  it("is one record where taxon, days and castes agree, however the place is written", async () => {
    expect(
      await reasons(
        [row({ occurrenceID: "a1" })],
        [row({ occurrenceID: "a1", gridReference: "SP50", caste: "worker" })],
      ),
    ).toEqual({
      walks: ["used"],
      portal: ["repeated_id"],
      asked: 0,
    });
  });

  it("is two records where they differ, and both are asked about", async () => {
    const agreeing = row({ occurrenceID: "a1" });
    expect(
      await reasons(
        [agreeing, row({ occurrenceID: "a2" })],
        [agreeing, row({ occurrenceID: "a2", scientificName: "Bombus terrestris" })],
      ),
    ).toEqual({ walks: ["used", "used"], portal: ["repeated_id", "used"], asked: 2 });
  });

  it("is nothing where the sources number their records each for itself", async () => {
    const numbered = (name: string) =>
      ["1", "2", "3"].map((occurrenceID) => row({ occurrenceID, scientificName: name }));
    expect(await reasons(numbered("Bombus pratorum"), numbered("Bombus terrestris"))).toEqual({
      walks: ["used", "used", "used"],
      portal: ["used", "used", "used"],
      asked: 0,
    });
  });

  it("lets the one that can be used count", async () => {
    expect(
      await reasons([row({ occurrenceID: "a1", scientificName: "Bombus prattorum" })], [row({ occurrenceID: "a1" })]),
    ).toMatchObject({ walks: ["repeated_id"], portal: ["used"] });
  });
});

describe("two rows that say the same", () => {
  // 51.7512, −1.2512 is E 451,788 N 206,099, in SP5106 and in tetrad SP50D: columns of 2 km from A in the south-west run
  // north five by five, so that E 0–2 km, N 6–8 km is D.
  const point = (radius: string) => ({
    decimalLatitude: "51.7512",
    decimalLongitude: "-1.2512",
    coordinateUncertaintyInMeters: radius,
  });

  it("are one where a reference and a point meet at the finest square both know", async () => {
    expect(await reasons([row({ gridReference: "SP5106" })], [row(point("50"))])).toMatchObject({
      portal: ["two_routes"],
    });
    expect(await reasons([row({ gridReference: "SP50D" })], [row(point("50"))])).toMatchObject({
      portal: ["two_routes"],
    });
    expect(await reasons([row({ gridReference: "SP50" })], [row(point("50"))])).toMatchObject({
      portal: ["two_routes"],
    });
    expect(await reasons([row({ gridReference: "SP50E" })], [row(point("50"))])).toMatchObject({ portal: ["used"] });
  });

  it("are not guessed at where a 10 km square could be any of several", async () => {
    expect(
      await reasons([row({ gridReference: "SP50" })], [row(point("50")), row({ gridReference: "SP5809" })]),
    ).toMatchObject({ portal: ["used", "used"] });
  });

  it("are joined one to one: what a source has more of stays", async () => {
    expect(await reasons([row()], [row(), row()])).toMatchObject({ walks: ["used"], portal: ["two_routes", "used"] });
  });

  it("pair caste with caste, and one that states none with what is left", async () => {
    expect(
      await reasons(
        [row({ caste: "queen" }), row({ caste: "worker" })],
        [row({ caste: "worker" }), row({ caste: "queen" })],
      ),
    ).toMatchObject({ portal: ["two_routes", "two_routes"] });
    expect(await reasons([row({ caste: "queen" })], [row()])).toMatchObject({ portal: ["two_routes"] });
    expect(await reasons([row({ caste: "queen" })], [row({ caste: "worker" })])).toMatchObject({ portal: ["used"] });
  });

  it("are two specimens where they have two catalogue numbers", async () => {
    expect(await reasons([row({ catalogNumber: "1" })], [row({ catalogNumber: "2" })])).toMatchObject({
      portal: ["used"],
    });
    expect(await reasons([row({ catalogNumber: "1" })], [row({ catalogNumber: "1" })])).toMatchObject({
      portal: ["two_routes"],
    });
  });
});

describe("a ruling", () => {
  const [one, other] = [row({ occurrenceID: "a1" }), row({ occurrenceID: "b1" })];

  it("parts two that look like one", async () => {
    const ruling = { recordKey: "portal:b1", ruling: "not the same", value: "walks:a1" } as const;
    expect(await reasons([one], [other], [ruling])).toMatchObject({ walks: ["used"], portal: ["used"] });
  });

  it("joins two that do not, and the earlier counts", async () => {
    const far = row({ occurrenceID: "b1", gridReference: "SP7825" });
    const ruling = { recordKey: "portal:b1", ruling: "same as", value: "walks:a1" } as const;
    expect(await reasons([one], [far])).toMatchObject({ portal: ["used"] });
    expect(await reasons([one], [far], [ruling])).toMatchObject({ walks: ["used"], portal: ["two_routes"] });
  });
});
