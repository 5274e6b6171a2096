import { describe, expect, it } from "vitest";
import { useDatabase } from "../reading.ts";
import { type Files, folderOf, metaXml, readFiles, type Table } from "./archives.ts";

const database = useDatabase();
const read = (files: Files | Buffer | string, settings?: object) => readFiles(database(), files, settings);

const COLUMNS = ["occurrenceID", "scientificName", "eventDate"];

/** An archive of one table of occurrences. */
function archive(content: string | Uint8Array, table: Partial<Table> = {}, file = "occurrence.txt"): Files {
  return { "meta.xml": metaXml({ rowType: "Occurrence", file, columns: COLUMNS, ...table }), [file]: content };
}

const HEADER = "id,name,date\n";
const TWO = `${HEADER}o1,Bombus pratorum,2021-04-03\no2,Bombus lucorum,2021-05-06\n`;
const NAMES = [
  [2, "Bombus pratorum"],
  [3, "Bombus lucorum"],
];

/** What every feature means is that of the Darwin Core text guide (2023) and its schema, where nothing else is named. */
describe("an occurrence core", () => {
  it("is read from a zip, a zip with a folder around, and a folder", async () => {
    const files = archive(TWO);
    const within = Object.fromEntries(Object.entries(files).map(([path, content]) => [`walks 2021/${path}`, content]));
    for (const one of [files, within, folderOf(files), folderOf(within)]) {
      const { rows, told } = await read(one);
      expect(rows.map(({ row, scientificName }) => [row, scientificName])).toEqual(NAMES);
      expect(told).toEqual([]);
    }
  });

  it("has the guide's defaults: a comma, a quotation mark, no header", async () => {
    const { rows } = await read(archive('o1,"Bombus, ""pratorum""",2021\n', { attributes: "" }));
    expect(rows).toEqual([
      { part: "walks.zip", row: 1, occurrenceID: "o1", scientificName: 'Bombus, "pratorum"', eventDate: "2021" },
    ]);
  });

  it.each([
    ["a tab", "\\t", "\t"],
    ["a semicolon", ";", ";"],
    ["a bar", "|", "|"],
  ])("may be parted by %s", async (_, written, delimiter) => {
    const attributes = `fieldsTerminatedBy="${written}" ignoreHeaderLines="1"`;
    const { rows } = await read(archive(TWO.replaceAll(",", delimiter), { attributes }));
    expect(rows.map(({ row, scientificName }) => [row, scientificName])).toEqual(NAMES);
  });

  it("takes a quotation mark for text where nothing encloses cells", async () => {
    const attributes = 'fieldsTerminatedBy="\\t" fieldsEnclosedBy="" ignoreHeaderLines="1"';
    const text = 'id\tname\tdate\no1\t"Bombus\t2021\no2\t9°55\'47.29"S\t2022\n';
    const { rows, told } = await read(archive(text, { attributes }));
    expect(rows.map(({ scientificName }) => scientificName)).toEqual(['"Bombus', "9°55'47.29\"S"]);
    expect(told).toEqual([]);
  });

  it("may be enclosed by another mark", async () => {
    const attributes = `fieldsEnclosedBy="'" ignoreHeaderLines="1"`;
    const { rows } = await read(archive(`${HEADER}'o1','Bombus, "the ''early'' one"','2021'\n`, { attributes }));
    expect(rows[0]?.scientificName).toBe(`Bombus, "the 'early' one"`);
  });

  it("ends its rows as described, and otherwise", async () => {
    const plain = (ends: string) => `fieldsEnclosedBy="" linesTerminatedBy="${ends}" ignoreHeaderLines="1"`;
    for (const [ends, text] of [
      ["\\r\\n", TWO],
      ["\\n", TWO.replaceAll("\n", "\r\n")],
      ["\\r", TWO.replaceAll("\n", "\r")],
      ["\\n", TWO.replaceAll("\n", "\r")],
    ] as const) {
      const { rows } = await read(archive(text, { attributes: plain(ends) }));
      expect(rows.map(({ row, scientificName }) => [row, scientificName])).toEqual(NAMES);
    }
    const { rows } = await read(archive(`${HEADER}o1,a\rb,2021\n`, { attributes: plain("\\n") }));
    expect(rows.map(({ row, scientificName }) => [row, scientificName])).toEqual([[2, "a\rb"]]);
  });

  it.each([
    ["UTF-8", Buffer.from],
    ["UTF-8 with a mark", (text: string) => Buffer.from(`\uFEFF${text}`)],
    ["ISO-8859-1", (text: string) => Buffer.from(text, "latin1")],
    ["Windows-1252", (text: string) => Buffer.from(text.replace("–", "\u0096"), "latin1")],
    ["UTF-16 with a mark", (text: string) => Buffer.from(`\uFEFF${text}`, "utf16le")],
    ["UTF-16", (text: string) => Buffer.from(text, "utf16le")],
    ["UTF-16", (text: string) => Buffer.from(text, "utf16le").swap16()],
    ["UTF-16BE", (text: string) => Buffer.from(text, "utf16le").swap16()],
  ])("may be in %s", async (encoding, encode) => {
    const place = encoding === "ISO-8859-1" ? "Skåne" : "Skåne – Ystad";
    const attributes = `encoding="${encoding.split(" ")[0]}" ignoreHeaderLines="1"`;
    const { rows, told } = await read(archive(encode(`${HEADER}o1,${place},2021\n`), { attributes }));
    expect(rows[0]?.scientificName).toBe(place);
    expect(told).toEqual([]);
  });

  it("that is not in the encoding described is read by its bytes, with a question", async () => {
    const { rows, told } = await read(archive(Buffer.from(`${HEADER}o1,Skåne,2021\n`, "latin1")));
    expect(rows[0]?.scientificName).toBe("Skåne");
    expect(told).toEqual(["walks.zip:1 archive_table_shape"]);
  });

  it("may have lines before its rows, which count and are not read", async () => {
    const text = `# "walks, of 2021\n#\n${HEADER}o1,"Bombus\npratorum",2021\n\no2,Bombus lucorum,2022\n`;
    const { rows, told } = await read(archive(text, { attributes: 'ignoreHeaderLines="3"' }));
    expect(rows.map(({ row, scientificName }) => [row, scientificName])).toEqual([
      [4, "Bombus\npratorum"],
      [6, "Bombus lucorum"],
    ]);
    expect(told).toEqual([]);
  });

  it("binds columns by index, whatever the header says", async () => {
    const { rows, findings } = await read(archive("eventDate,scientificName,occurrenceID\no1,Bombus,2021\n"));
    expect(rows[0]).toMatchObject({ occurrenceID: "o1", scientificName: "Bombus", eventDate: "2021" });
    expect(findings).toMatchObject([
      {
        check: "archive_header_disagrees",
        severity: "ask",
        message: "column 1 is described as occurrenceID and headed “eventDate”, and 1 more; the description counts",
      },
    ]);
  });

  it("whose header is described as a row is read without it", async () => {
    const { rows, told } = await read(
      archive("occurrenceID,scientificName,eventDate\no1,Bombus,2021\n", { attributes: "" }),
    );
    expect(rows.map(({ row, occurrenceID }) => [row, occurrenceID])).toEqual([[2, "o1"]]);
    expect(told).toEqual(["walks.zip:1 archive_table_shape"]);
  });

  it("may give values for all rows and for rows without one; \\N is none", async () => {
    const more = `<field index="3" term="http://rs.tdwg.org/dwc/terms/geodeticDatum" default="WGS84"/>
      <field term="http://rs.tdwg.org/dwc/terms/basisOfRecord" default="HumanObservation"/>
      <field index="0" term="http://rs.tdwg.org/dwc/terms/catalogNumber"/>`;
    const text = "id,name,date,datum\no1,Bombus,\\N,ED50\no2,Apis,2021,\no3,Apis,2021,\\N\n";
    const { rows } = await read(archive(text, { more }));
    const each = { part: "walks.zip", basisOfRecord: "HumanObservation" };
    expect(rows).toEqual([
      { ...each, row: 2, occurrenceID: "o1", catalogNumber: "o1", scientificName: "Bombus", geodeticDatum: "ED50" },
      {
        ...each,
        row: 3,
        occurrenceID: "o2",
        catalogNumber: "o2",
        scientificName: "Apis",
        eventDate: "2021",
        geodeticDatum: "WGS84",
      },
      {
        ...each,
        row: 4,
        occurrenceID: "o3",
        catalogNumber: "o3",
        scientificName: "Apis",
        eventDate: "2021",
        geodeticDatum: "WGS84",
      },
    ]);
  });

  it("knows terms of Dublin Core and none of a foreign vocabulary", async () => {
    const columns = [
      "occurrenceID",
      "scientificName",
      "http://purl.org/dc/terms/license",
      "http://purl.org/dc/terms/type",
      "http://example.org/terms/eventDate",
      "http://rs.tdwg.org/dwc/iri/recordedBy",
    ];
    const text = "id,name,l,t,d,r\no1,Bombus,CC0,Event,2021,http://example.org/p1\n";
    const { rows, findings } = await read(archive(text, { columns }));
    expect(rows).toEqual([
      { part: "walks.zip", row: 2, occurrenceID: "o1", scientificName: "Bombus", license: "CC0", type: "Event" },
    ]);
    expect(findings.find(({ check }) => check === "unknown_header")?.value).toBe("http://example.org/terms/eventDate");
  });

  it("may be of several files, each a part with rows of its own", async () => {
    const files = {
      ...archive(TWO, { file: "2021.csv more/2022.csv" }, "2021.csv more/2022.csv"),
      "2021.csv": TWO,
      "more/2022.csv": `${HEADER}o3,Bombus muscorum,2022-05-06\no4,short\n`,
    };
    const { rows, parts, told } = await read(files);
    expect(rows.map(({ part, row, occurrenceID }) => [part, row, occurrenceID])).toEqual([
      ["walks.zip/2021.csv", 2, "o1"],
      ["walks.zip/2021.csv", 3, "o2"],
      ["walks.zip/more/2022.csv", 2, "o3"],
      ["walks.zip/more/2022.csv", 3, "o4"],
    ]);
    expect(parts.map(({ result }) => [result.records, result.read, result.rescued])).toEqual([
      [2, 2, []],
      [2, 1, [3]],
    ]);
    expect(told).toEqual(["walks.zip/more/2022.csv:3 ragged_row_filled"]);
  });

  it("counts rows with cells too many or too few", async () => {
    const { rows, parts, told } = await read(archive(`${TWO}o3,a,b,c\no4,Apis\no5,Apis,2021,\n`));
    expect(rows.map(({ row, occurrenceID }) => [row, occurrenceID])).toEqual([
      [2, "o1"],
      [3, "o2"],
      [5, "o4"],
      [6, "o5"],
    ]);
    expect(parts[0]?.result).toMatchObject({ records: 5, read: 3, rescued: [5], unreadable: 1, lastRow: 6 });
    expect(told).toEqual(["walks.zip:4 unreadable_row", "walks.zip:5 ragged_row_filled"]);
  });

  it("says which described columns its rows do not have, once", async () => {
    const { rows, findings } = await read(archive(TWO, { columns: [...COLUMNS, "", "recordedBy", "locality"] }));
    expect(rows).toHaveLength(2);
    expect(findings.map(({ check, value }) => [check, value])).toEqual([
      ["archive_column_missing", "http://rs.tdwg.org/dwc/terms/recordedBy"],
      ["archive_column_missing", "http://rs.tdwg.org/dwc/terms/locality"],
    ]);
  });

  it("lets the source map a term, a header or a column by number", async () => {
    const columns = ["occurrenceID", "verbatimIdentification", "", ""];
    const text = "id,v,Seen,Where\no1,Bombus,2021,TQ38\n";
    const own = { scientificName: "verbatimIdentification", eventDate: "seen", gridReference: "#4", caste: "Kaste" };
    const { rows, findings } = await read(archive(text, { columns }), { columns: own });
    expect(rows).toEqual([
      {
        part: "walks.zip",
        row: 2,
        occurrenceID: "o1",
        scientificName: "Bombus",
        eventDate: "2021",
        gridReference: "TQ38",
      },
    ]);
    expect(findings.map(({ check, value }) => [check, value])).toEqual([["mapped_header_missing", "Kaste"]]);
  });

  it("takes the licence of the data set's metadata where its rows and its source state none", async () => {
    const eml = `<eml:eml xmlns:eml="eml://ecoinformatics.org/eml-2.1.1"><dataset><intellectualRights><para>Under
      <ulink url="https://creativecommons.org/licenses/by/4.0/legalcode"><citetitle>CC BY</citetitle></ulink></para></intellectualRights></dataset></eml:eml>`;
    const files = archive("id,name,l\no1,Bombus,CC0\no2,Apis,\n", {
      columns: ["occurrenceID", "scientificName", "http://purl.org/dc/terms/license"],
    });
    const described = {
      ...files,
      "meta.xml": String(files["meta.xml"]).replace("<archive", '<archive metadata="eml.xml"'),
      "eml.xml": eml,
    };
    const licences = async (settings: object) => (await read(described, settings)).rows.map(({ license }) => license);
    expect(await licences({})).toEqual(["CC0", "https://creativecommons.org/licenses/by/4.0/legalcode"]);
    expect(await licences({ licence: "CC-BY-4.0" })).toEqual(["CC0", undefined]);
  });

  it("takes what looks like a part of a statement for text", async () => {
    const nasty = "it's {joins} {target} {0} $1 \\ \u{1F41D}";
    const more = `<field term="http://rs.tdwg.org/dwc/terms/locality" default="${nasty}"/>`;
    const files = archive(TWO, { more });
    const { rows } = await read({
      ...files,
      "meta.xml": String(files["meta.xml"]).replace("<archive", '<archive metadata="eml.xml"'),
      "eml.xml": `<eml><dataset><intellectualRights>${nasty}</intellectualRights></dataset></eml>`,
    });
    expect(rows[0]).toMatchObject({ locality: nasty, license: nasty });
  });

  it("takes a date format as a hint only", async () => {
    const attributes = 'dateFormat="DD-MM-YYYY" ignoreHeaderLines="1"';
    const { rows, findings } = await read(archive(`${HEADER}o1,Bombus,03-04-2021\n`, { attributes }));
    expect(rows[0]?.eventDate).toBe("03-04-2021");
    expect(findings.map(({ check, wayOut }) => [check, wayOut])).toEqual([
      ["archive_date_format", "set date_format: day-first for the source if they are"],
    ]);
  });

  it("names its other tables and leaves them alone", async () => {
    const meta = metaXml(
      { rowType: "Occurrence", file: "occurrence.txt", columns: COLUMNS },
      { rowType: "MeasurementOrFact", file: "facts.txt", columns: ["", "measurementType"] },
      { rowType: "Occurrence", file: "verbatim.txt", columns: COLUMNS },
    );
    const { rows, findings } = await read({
      "meta.xml": meta,
      "occurrence.txt": TWO,
      "verbatim.txt": TWO,
      "facts.txt": "x",
    });
    expect(rows).toHaveLength(2);
    expect(findings.map(({ check, value }) => [check, value])).toEqual([
      ["archive_table_unused", "facts.txt"],
      ["archive_table_unused", "verbatim.txt"],
    ]);
  });

  it("does not count the same records as they came, where they are described as one table", async () => {
    const files = archive(TWO, { file: "occurrence.txt verbatim.txt" });
    const { rows, told } = await read({ ...files, "occurrence.txt": TWO, "verbatim.txt": TWO });
    expect(rows.map(({ part, row }) => [part, row])).toEqual([
      ["walks.zip", 2],
      ["walks.zip", 3],
    ]);
    expect(told).toEqual(["walks.zip:1 archive_table_unused"]);
  });

  it("without a row or a known column says so", async () => {
    expect((await read(archive(HEADER))).told).toEqual(["walks.zip:1 no_rows"]);
    const { parts, told } = await read(archive(TWO, { columns: ["", "bed"] }));
    expect(parts[0]?.result).toMatchObject({ records: 2, read: 0, unreadable: 2 });
    expect(told).toEqual(["walks.zip:1 unused_terms", "walks.zip:1 no_known_column"]);
  });
});
