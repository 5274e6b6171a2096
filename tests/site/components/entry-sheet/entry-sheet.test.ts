import { join } from "node:path";
import { openXlsx, readXlsx, saveXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { checkScheme } from "../../../../src/build/check-records.ts";
import { measureScheme } from "../../../../src/build/pipeline.ts";
import { entrySheetText } from "../../../../src/site/components/entry-sheet/entry-sheet.ts";
import { entryWorkbook } from "../../../../src/site/components/entry-sheet/entry-workbook.ts";
import { type SheetTerm, sheetColumns } from "../../../../src/site/components/entry-sheet/sheet-columns.ts";
import { keepLog } from "../../../support/run-scheme.ts";
import { makeTemporaryFolder } from "../../../support/temporary-folder.ts";
import { CASTES, CONTENT, writeSmallScheme } from "./small-scheme.ts";

const TERMS = sheetColumns(CASTES).map(({ term }) => term);
type Filled = Partial<Record<SheetTerm, string | number | Date>>;

/** What people write: a day and a month, references of 100 m, 2 km and 10 km, decimal commas, names of two languages, a group. */
const ROWS: readonly Filled[] = [
  {
    scientificName: "Bombus terrestris",
    eventDate: new Date(Date.UTC(2021, 4, 14)),
    gridReference: "NZ257641",
    caste: "queen",
    individualCount: 1,
    recordedBy: "Recorder One",
    evidence: "sight",
    partSeen: "tail",
  },
  {},
  {
    scientificName: "Buff/white-tailed bumblebee group",
    eventDate: new Date(Date.UTC(2021, 4, 15)),
    gridReference: "NZ26F",
    caste: "3 worker, 1 male",
    individualCount: 4,
    recordedBy: "Recorder Two",
    occurrenceRemarks: "à la mi-journée ; près du mur",
  },
  { scientificName: "Bombus terrestris", year: 2021, month: 6, gridReference: "NZ36", recordedBy: "Recorder One" },
  {
    scientificName: "bourdon terrestre",
    eventDate: new Date(Date.UTC(2022, 3, 2)),
    decimalLatitude: "54,978",
    decimalLongitude: "-1,617",
    geodeticDatum: "WGS84",
    coordinateUncertaintyInMeters: 50,
    recordedBy: "École Trois",
    identifiedBy: "Recorder One",
  },
  {},
];

/** By hand: the four rows that say something, with their names, castes, first days and supported squares. */
const READ = [
  { taxon_id: "terrestris", castes: "queen", start: "2021-05-14", hectad: "NZ26", tetrad: "NZ26M" },
  { taxon_id: "group", castes: "male|worker", start: "2021-05-15", hectad: "NZ26", tetrad: "NZ26F" },
  { taxon_id: "terrestris", castes: "", start: "2021-06-01", hectad: "NZ36", tetrad: null },
  { taxon_id: "terrestris", castes: "", start: "2022-04-02", hectad: "NZ26", tetrad: "NZ26M" },
];

async function filledWorkbook(): Promise<Uint8Array> {
  const workbook = await openXlsx(await entryWorkbook(CONTENT));
  const [records] = workbook.sheets;
  if (records === undefined) throw new Error("the workbook has no sheet");
  records.rows = [[...TERMS], ...ROWS.map((row) => TERMS.map((term) => row[term] ?? null))];
  return await saveXlsx(workbook);
}

/** As a spreadsheet of a language with decimal commas saves it. */
function filledText(): string {
  const cell = (value: Filled[SheetTerm]) => {
    const text = value instanceof Date ? value.toISOString().slice(0, 10) : String(value ?? "");
    return text.includes(";") ? `"${text}"` : text;
  };
  return (
    entrySheetText(CASTES, "fr") + ROWS.map((row) => `${TERMS.map((term) => cell(row[term])).join(";")}\r\n`).join("")
  );
}

async function recordsOf(content: string, folder: string): Promise<unknown[]> {
  const { database } = await measureScheme({ content, workFolder: join(folder, "work"), progress: keepLog() });
  try {
    return await database.rows(
      "SELECT taxon_id, castes, (DATE '1970-01-01' + first_day::INTEGER)::VARCHAR AS start, hectad, tetrad FROM records WHERE status = 'used' ORDER BY record_no",
    );
  } finally {
    database.close();
  }
}

describe("the entry sheet", () => {
  it.each([
    ["sheet.xlsx", filledWorkbook],
    ["sheet.csv", async () => filledText()],
  ] as const)("is read back from %s without a mapping: every row is used, empty ones are none", async (file, fill) => {
    const folder = makeTemporaryFolder();
    writeSmallScheme(join(folder, "content"), file, await fill());
    const answer = await checkScheme({
      content: join(folder, "content"),
      workFolder: join(folder, "work"),
      reviewFolder: join(folder, "review"),
      progress: keepLog(),
    });
    expect(answer.records).toEqual({ read: 4, used: 4, held: 0, not_used: 0 });
    expect(answer.proposed_settings).toBe("");
    expect(answer.findings.filter(({ severity }) => severity !== "note")).toEqual([]);
    expect(await recordsOf(join(folder, "content"), folder)).toEqual(READ);
  });

  it("is read as no record while it is empty", async () => {
    for (const [file, bytes] of [
      ["sheet.xlsx", await entryWorkbook(CONTENT)],
      ["sheet.csv", entrySheetText(CASTES, "en")],
    ] as const) {
      const folder = makeTemporaryFolder();
      writeSmallScheme(join(folder, "content"), file, bytes);
      const answer = await checkScheme({
        content: join(folder, "content"),
        workFolder: join(folder, "work"),
        reviewFolder: join(folder, "review"),
        progress: keepLog(),
      });
      expect(answer.records.read, file).toBe(0);
    }
  });

  it("has lists to choose from, a frozen head, dates as dates, and says what each column holds", async () => {
    const { sheets } = await readXlsx(await entryWorkbook(CONTENT));
    expect(sheets.map(({ name }) => name)).toEqual(["données", "colonnes", "noms d’ici", "à propos"]);
    const [records, columns, names, about] = sheets;
    expect(records?.rows[0]).toEqual(TERMS);
    expect(records?.freezePane?.rows).toBe(1);
    const lists = new Map(
      records?.dataValidations?.filter(({ type }) => type === "list").map((one) => [one.range[0], one]),
    );
    expect(lists.get("A")?.formula1).toBe("'noms d’ici'!$A$2:$A$4");
    expect(lists.get("K")?.values).toEqual(CASTES);
    expect(lists.get("O")?.values).toEqual(["sight", "photograph", "specimen"]);
    expect(columns?.rows.slice(1).map(([term]) => term)).toEqual(TERMS);
    expect(columns?.rows.slice(1).every(([term, , holds]) => holds === `About ${String(term)}.`)).toBe(true);
    expect(names?.rows.slice(1).map(([name]) => name)).toEqual(CONTENT.names.map(({ write }) => write));
    expect(about?.rows.flat()).toContain(CONTENT.invented);
  });

  it("is the same bytes each time", async () => {
    const first = await entryWorkbook(CONTENT);
    await new Promise((resolve) => setTimeout(resolve, 2100)); // A time in a zip has steps of two seconds.
    expect(Buffer.compare(Buffer.from(first), Buffer.from(await entryWorkbook(CONTENT)))).toBe(0);
  });

  it("parts cells by a semicolon where numbers have a decimal comma", () => {
    expect(entrySheetText(CASTES, "en-GB").split(",")).toHaveLength(TERMS.length);
    expect(entrySheetText(CASTES, "fr").split(";")).toHaveLength(TERMS.length);
    expect(entrySheetText([], "en-GB")).not.toContain("caste");
  });
});

// Excel's limit on a list that stands in the rule itself is 255 signs.
it("offers no list longer than a spreadsheet program opens", async () => {
  const parts = Array.from({ length: 40 }, (_, n) => `part-number-${n}`);
  const { sheets } = await readXlsx(await entryWorkbook({ ...CONTENT, parts }));
  const lists = (sheets[0]?.dataValidations ?? []).map(({ values }) => (values ?? []).join(","));
  expect(lists).toContain("queen,worker,male");
  expect(Math.max(...lists.map(({ length }) => length))).toBeLessThanOrEqual(255);
});
