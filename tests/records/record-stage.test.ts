import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { REASONS } from "../../src/records/reasons.ts";
import { interpret } from "./interpreting.ts";
import { useDatabase } from "./reading.ts";

const database = useDatabase();
const HEADER =
  "occurrenceID,scientificName,eventDate,gridReference,decimalLatitude,decimalLongitude,recordedBy,caste,individualCount,occurrenceStatus,basisOfRecord,degreeOfEstablishment,dataGeneralizations\n";
const ORDER = [
  "occurrenceID",
  "scientificName",
  "eventDate",
  "gridReference",
  "decimalLatitude",
  "decimalLongitude",
  "recordedBy",
  "caste",
  "individualCount",
  "occurrenceStatus",
  "basisOfRecord",
  "degreeOfEstablishment",
  "dataGeneralizations",
] as const;
type Row = Partial<Record<(typeof ORDER)[number], string>>;

const GOOD: Row = { scientificName: "Bombus pratorum", eventDate: "2015-04-03", gridReference: "TQ3485" };

function table(rows: readonly Row[]): string {
  return (
    HEADER +
    rows.map((row) => `${ORDER.map((field) => `"${(row[field] ?? "").replaceAll('"', '""')}"`).join(",")}\n`).join("")
  );
}

const reasonsOf = async (rows: readonly Row[]) =>
  (await interpret(database(), { walks: table(rows) })).records.map(({ status, reason }) => `${status}: ${reason}`);

describe("a record", () => {
  it("that is whole is used, with its squares and its period", async () => {
    const { records, findings } = await interpret(database(), { walks: table([GOOD]) });
    expect(records).toMatchObject([
      {
        row: 2,
        taxon_id: "invented-pratorum",
        hectad: "TQ38",
        tetrad: "TQ38M",
        status: "used",
        reason: "used",
        present: true,
      },
    ]);
    expect(findings).toEqual([]);
  });

  it.each<[string, Row, string, string, string]>([
    ["30 February", { eventDate: "2015-02-30" }, "not used: date_unreadable", "eventDate", "2015-02-30"],
    ["no date", { eventDate: "" }, "not used: date_empty", "eventDate", ""],
    ["a date after the edition", { eventDate: "2099-05-01" }, "not used: date_in_future", "eventDate", "2099-05-01"],
    [
      "a name not in the checklist",
      { scientificName: "Bombus fictus" },
      "not used: name_unknown",
      "scientificName",
      "Bombus fictus",
    ],
    [
      "a qualified name",
      { scientificName: "Bombus cf. pratorum" },
      "not used: name_qualified",
      "scientificName",
      "Bombus cf. pratorum",
    ],
    ["no name", { scientificName: "" }, "not used: name_empty", "scientificName", ""],
    [
      "a reference of no grid",
      { gridReference: "TI1234" },
      "not used: grid_reference_unreadable",
      "gridReference",
      "TI1234",
    ],
    [
      "a reference from the wrong grid",
      { gridReference: "NW0576" },
      "not used: grid_reference_outside_territory",
      "gridReference",
      "NW0576",
    ],
    [
      "exchanged coordinates",
      { gridReference: "", decimalLatitude: "-0.0015", decimalLongitude: "51.4778" },
      "not used: coordinates_exchanged",
      "decimalLatitude",
      "-0.0015, 51.4778",
    ],
    ["no place", { gridReference: "" }, "not used: place_empty", "gridReference", ""],
    [
      "a status nobody knows",
      { occurrenceStatus: "perhaps" },
      "not used: status_unreadable",
      "occurrenceStatus",
      "perhaps",
    ],
    [
      "the worker of a cuckoo",
      { scientificName: "Bombus vestalis", caste: "worker" },
      "held: impossible_caste",
      "caste",
      "worker",
    ],
    ["a fossil", { basisOfRecord: "FossilSpecimen" }, "not used: excluded", "basisOfRecord", "FossilSpecimen"],
    ["a captive", { degreeOfEstablishment: "captive" }, "not used: excluded", "degreeOfEstablishment", "captive"],
    [
      "two castes that exclude each other",
      { caste: "male worker" },
      "held: contradictory_castes",
      "caste",
      "male worker",
    ],
  ])(
    "with %s says so, with file, row, field and value, and the rest is used",
    async (_, fault, expected, field, value) => {
      const { records, findings } = await interpret(database(), { walks: table([GOOD, { ...GOOD, ...fault }, GOOD]) });
      expect(records.map(({ status, reason }) => `${status}: ${reason}`)).toEqual([
        "used: used",
        expected,
        "used: used",
      ]);
      expect(findings.filter(({ row }) => row === 3)).toContainEqual(
        expect.objectContaining({ file: "records/walks.csv", row: 3, field, value }),
      );
      expect(findings.every(({ row }) => row === 3)).toBe(true);
      expect(findings.every(({ message, way_out }) => message !== "" && way_out !== "")).toBe(true);
    },
  );

  it("of an absence makes a visit, not an occurrence", async () => {
    const { records } = await interpret(database(), { walks: table([{ ...GOOD, occurrenceStatus: "notDetected" }]) });
    expect(records).toMatchObject([{ status: "used", reason: "not_detected", present: false }]);
  });

  it("with an id that stood before is not used", async () => {
    const same = { ...GOOD, occurrenceID: "a" };
    expect(await reasonsOf([same, same, { ...GOOD, occurrenceID: "b" }])).toEqual([
      "used: used",
      "not used: repeated_id",
      "used: used",
    ]);
    expect(await reasonsOf([GOOD, GOOD])).toEqual(["used: used", "used: used"]);
  });

  it("whose place was coarsened by nobody knows how much is held", async () => {
    const { gridReference: _, ...elsewhere } = GOOD;
    const coarse = { ...elsewhere, decimalLatitude: "51.5512", decimalLongitude: "-0.0751" };
    expect(
      await reasonsOf([
        { ...coarse, dataGeneralizations: "moved at random" },
        { ...coarse, dataGeneralizations: "to a 2 km square" },
      ]),
    ).toEqual(["held: generalised_without_size", "used: used"]);
  });

  it("whose place is withheld is as coarse as the text says, and one whose other data are withheld is not", async () => {
    const header = "scientificName,eventDate,decimalLatitude,decimalLongitude,informationWithheld";
    const rows = ["exact location withheld", "coordinates given to a 2 km square", "name of the recorder withheld"].map(
      (withheld) => `Bombus pratorum,2015-04-03,51.5512,-0.0751,${withheld}`,
    );
    const { records } = await interpret(database(), { walks: [header, ...rows].join("\n") });
    expect(records.map(({ reason, tetrad }) => [reason, tetrad !== null])).toEqual([
      ["generalised_without_size", false],
      ["used", false],
      ["used", true],
    ]);
  });

  it("that says female may be of a species with queens and workers", async () => {
    expect(
      await reasonsOf([
        { ...GOOD, caste: "female" },
        { ...GOOD, scientificName: "Bombus vestalis", caste: "female" },
      ]),
    ).toEqual(["used: used", "used: used"]);
  });

  it("that came by two routes counts once: same taxon, day, place and recorder, in two sources", async () => {
    const row = { ...GOOD, recordedBy: "A. Recorder" };
    const routes = async (first: Row, second: Row) =>
      (await interpret(database(), { walks: table([first]), portal: table([second]) })).records.map(
        ({ reason }) => reason,
      );
    expect(await routes(row, { ...row, recordedBy: "a recorder" })).toEqual(["used", "two_routes"]);
    expect(await routes(row, { ...row, caste: "worker" })).toEqual(["used", "two_routes"]);
    expect(await routes({ ...row, caste: "queen" }, { ...row, caste: "worker" })).toEqual(["used", "used"]);
    expect(await routes(row, { ...row, recordedBy: "" })).toEqual(["used", "used"]);
    expect(await routes(row, { ...row, recordedBy: "B. Recorder" })).toEqual(["used", "used"]);
    const greek = { ...row, recordedBy: "Α. Καταγραφέας" };
    expect(await routes(greek, { ...greek, recordedBy: "α καταγραφεας" })).toEqual(["used", "two_routes"]);
    expect(await routes(greek, { ...greek, recordedBy: "Β. Καταγραφέας" })).toEqual(["used", "used"]);
    expect(await routes(row, { ...row, eventDate: "2015-04-04" })).toEqual(["used", "used"]);
    expect((await interpret(database(), { walks: table([row, row]) })).records.map(({ reason }) => reason)).toEqual([
      "used",
      "used",
    ]);
  });

  it("may give its date as days of the year", async () => {
    const { records } = await interpret(database(), {
      walks: "scientificName,year,startDayOfYear,endDayOfYear,gridReference\nBombus pratorum,2015,93,93,TQ38\n",
    });
    // Day 93 of 2015 is 3 April.
    expect(records).toMatchObject([{ status: "used", first_day: Date.UTC(2015, 3, 3) / 86_400_000 }]);
  });

  it("of a period lies in it whole", async () => {
    const years = ["1989", "1990", "1990/2005", "2005/2006", "2006-03", "2024-12-31", "2025-01"];
    const { records } = await interpret(database(), {
      walks: table(years.map((eventDate) => ({ ...GOOD, eventDate }))),
    });
    expect(records.map(({ period }) => period)).toEqual([null, 0, 0, null, 1, 1, null]);
  });
});

describe("laws", () => {
  const some = (...values: string[]) => fc.constantFrom(...values);
  const row: fc.Arbitrary<Row> = fc.record({
    occurrenceID: some("", "", "a", "b", "c"),
    scientificName: some(
      "Bombus pratorum",
      "B. pratorum",
      "Bombus lucorum agg.",
      "Bombus vestalis",
      "cf. pratorum",
      "Bombus fictus",
      "",
      "=cmd()",
      "<b>",
    ),
    eventDate: some("2015-04-03", "2015-02-30", "2015", "1990/2010", "", "2099", "../etc", "03/04/2015", "spring 1910"),
    gridReference: some("TQ3485", "TQ38", "TQ", "O1534", "NW0576", "", "", "🐝", "TQ123"),
    decimalLatitude: some("", "51.54822", "-0.1", "0", "95", "x"),
    decimalLongitude: some("", "-0.08327", "51.5", "0", "200"),
    recordedBy: some("", "A. Recorder", "B. Recorder", "שלום"),
    caste: some("", "worker", "male", "female", "queen", "male worker", "1q 3w", "?!"),
    individualCount: some("", "1", "0", "many"),
    occurrenceStatus: some("", "", "present", "absent", "perhaps"),
    basisOfRecord: some("", "HumanObservation", "FossilSpecimen", "a guess"),
    degreeOfEstablishment: some("", "captive"),
  });

  it("every record has one status and one reason that is known; who is not used or held has a finding with its place", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(row, { maxLength: 12 }), fc.array(row, { maxLength: 6 }), async (walks, portal) => {
        const { records, findings, files } = await interpret(database(), {
          walks: table(walks),
          portal: table(portal),
        });
        const counted = files.reduce((sum, { result }) => sum + result.records - result.unreadable, 0);
        expect(records).toHaveLength(walks.length + portal.length);
        expect(records).toHaveLength(counted);
        expect(new Set(records.map(({ record_no }) => record_no)).size).toBe(records.length);
        for (const { source, row: line, status, reason, hectad, tetrad, hectad_reason, tetrad_reason } of records) {
          expect(["used", "held", "not used"]).toContain(status);
          expect(REASONS).toHaveProperty(reason);
          expect(status === "used").toBe(["used", "not_detected"].includes(reason));
          const own = findings.filter((finding) => finding.file === `records/${source}.csv` && finding.row === line);
          const why = own.filter(({ check_name }) => check_name === reason);
          if (status !== "used" && !["contradictory_castes", "status_unreadable"].includes(reason))
            expect([reason, why.length > 0]).toEqual([reason, true]);
          if (status !== "used") expect(own.length).toBeGreaterThan(0);
          if (status === "used")
            expect(
              (hectad === null) === (hectad_reason !== null) && (tetrad === null) === (tetrad_reason !== null),
            ).toBe(true);
          if (tetrad !== null) expect(hectad).not.toBeNull();
        }
        for (const { file, row: line, message, way_out, severity } of findings) {
          expect(records.some((record) => `records/${record.source}.csv` === file && record.row === line)).toBe(true);
          expect(message !== "" && way_out !== "" && ["blocks", "ask", "note"].includes(severity)).toBe(true);
        }
      }),
      { numRuns: 25 },
    );
  });
});
