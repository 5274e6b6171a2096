import { describe, expect, it } from "vitest";
import { useDatabase } from "../reading.ts";
import { type Files, metaXml, type Row, readFiles, type Table } from "./archives.ts";

const database = useDatabase();
const read = (files: Files, settings?: object) => readFiles(database(), files, settings);

/** Records without what every row of these tests has. */
function bare(rows: readonly Row[]): object[] {
  return rows.map(({ part: _, ...row }) => row);
}

const EVENT: Table = {
  rowType: "Event",
  file: "event.txt",
  columns: [
    "eventID",
    "parentEventID",
    "eventDate",
    "decimalLatitude",
    "decimalLongitude",
    "coordinateUncertaintyInMeters",
    "samplingProtocol",
  ],
};
const OCCURRENCE: Table = {
  rowType: "Occurrence",
  file: "occurrence.txt",
  columns: ["", "occurrenceID", "scientificName", "eventDate", "gridReference", "recordedBy"],
};
const EVENTS = "id,parent,date,lat,lon,radius,protocol\n";
const RECORDS = "id,occurrence,name,date,grid,by\n";

function events(core: string, rows: string, ...more: Table[]): Files {
  return {
    "meta.xml": metaXml(EVENT, OCCURRENCE, ...more),
    "event.txt": EVENTS + core,
    "occurrence.txt": RECORDS + rows,
  };
}

// How rows of an extension belong to a core: Darwin Core text guide (2023) §2; what they take from it: the class Event.
describe("an event core", () => {
  it("gives its records date, place and protocol where they have none", async () => {
    const { rows, told } = await read(
      events(
        "e1,,2021-04-03,51.5,-0.1,100,transect\ne2,,2021-05-06,52,0,50,\n",
        "e1,o1,Bombus pratorum,,,A\ne2,o2,Bombus lucorum,2021-05-07,TQ38,\n",
      ),
    );
    expect(bare(rows)).toEqual([
      {
        row: 2,
        occurrenceID: "o1",
        eventID: "e1",
        scientificName: "Bombus pratorum",
        eventDate: "2021-04-03",
        decimalLatitude: "51.5",
        decimalLongitude: "-0.1",
        coordinateUncertaintyInMeters: "100",
        recordedBy: "A",
        samplingProtocol: "transect",
      },
      // A record with a place of its own takes neither coordinates nor radius of the event.
      {
        row: 3,
        occurrenceID: "o2",
        eventID: "e2",
        scientificName: "Bombus lucorum",
        eventDate: "2021-05-07",
        gridReference: "TQ38",
      },
    ]);
    expect(told).toEqual([]);
  });

  it("lets an event take date and place of the nearest event above that has them", async () => {
    const { rows, findings } = await read(
      events(
        [
          "wood,,2021,50,1,5000,",
          "plot,wood,,51.5,-0.1,10,trap",
          "visit,plot,2021-07-01,,,,",
          "tray,visit,,,,,",
          "cup,tray,,,,,",
          "lost,nowhere,,,,,",
          "one,other,,,,,net",
          "other,one,2020,,,,",
          "self,self,2019,,,,",
        ].join("\n"),
        "cup,o1,Apis,,,\nlost,o2,Apis,,,\none,o3,Apis,,,\nself,o4,Apis,,,\n",
      ),
    );
    const each = { scientificName: "Apis" };
    expect(bare(rows)).toEqual([
      {
        ...each,
        row: 2,
        occurrenceID: "o1",
        eventID: "cup",
        eventDate: "2021-07-01",
        decimalLatitude: "51.5",
        decimalLongitude: "-0.1",
        coordinateUncertaintyInMeters: "10",
        samplingProtocol: "trap",
      },
      { ...each, row: 3, occurrenceID: "o2", eventID: "lost" },
      { ...each, row: 4, occurrenceID: "o3", eventID: "one", eventDate: "2020", samplingProtocol: "net" },
      { ...each, row: 5, occurrenceID: "o4", eventID: "self", eventDate: "2019" },
    ]);
    // Of nine events four have a record; the first of the others is in row 2.
    expect(findings.map(({ row, check, message }) => [row, check, message])).toEqual([
      [2, "archive_event_empty", "this and 4 more events have no record, and make no visit"],
    ]);
  });

  it("keeps records of no event, and takes the first of events with one id", async () => {
    const { rows, findings } = await read(
      events(
        "e1,,2021,51,0,10,\ne1,,1999,10,10,1,\n,,1998,,,,\n",
        "e1,o1,Apis,,,\ne9,o2,Apis,2020,TQ38,\n,o3,Apis,,,\n",
      ),
    );
    expect(rows.map(({ occurrenceID, eventDate, gridReference }) => [occurrenceID, eventDate, gridReference])).toEqual([
      ["o1", "2021", undefined],
      ["o2", "2020", "TQ38"],
      ["o3", undefined, undefined],
    ]);
    expect(findings.map(({ file, row, check, value }) => [file, row, check, value])).toEqual([
      ["walks.zip/event.txt", 3, "archive_id_repeated", "e1"],
      ["walks.zip/event.txt", 4, "archive_id_repeated", ""],
      ["walks.zip", 3, "archive_row_alone", "e9"],
      ["walks.zip", 4, "archive_row_alone", ""],
    ]);
  });

  it("names a hundred rows of no event, and tells how many more there are", async () => {
    const many = Array.from({ length: 250 }, (_, index) => `x,o${index},Apis,,,`).join("\n");
    const { rows, findings } = await read(events("e1,,2021,51,0,10,\n", many));
    expect(rows).toHaveLength(250);
    const alone = findings.filter(({ check }) => check === "archive_row_alone");
    expect(alone).toHaveLength(101);
    expect(alone[100]?.value).toBe("150 more rows");
  });

  it("knows from a survey that a list is complete, where all surveys of the event agree", async () => {
    const survey: Table = {
      rowType: "http://rs.tdwg.org/eco/terms/Event",
      file: "survey.txt",
      columns: ["", "http://rs.tdwg.org/eco/terms/isTaxonomicScopeFullyReported"],
    };
    const { rows, told } = await read({
      ...events(
        "e1,,2021,,,,\ne2,e1,2021,,,,\ne3,,2021,,,,\n",
        "e1,o1,Apis,,,\ne2,o2,Apis,,,\ne3,o3,Apis,,,\n",
        survey,
      ),
      "survey.txt": "id,full\ne1,true\ne1,True\ne3,true\ne3,false\ne8,true\n",
    });
    // It is not inherited: what is above is complete for another place and time.
    expect(rows.map((row) => row.isTaxonomicScopeFullyReported)).toEqual(["true", undefined, undefined]);
    expect(told).toEqual(["walks.zip/survey.txt:6 archive_row_alone"]);
  });

  it("without its file leaves records with what they say themselves", async () => {
    const { "event.txt": _, ...files } = events("", "e1,o1,Apis,2020,TQ38,\n");
    const { rows, told } = await read(files);
    expect(bare(rows)).toEqual([
      { row: 2, occurrenceID: "o1", scientificName: "Apis", eventDate: "2020", gridReference: "TQ38" },
    ]);
    expect(told).toEqual(["walks.zip:1 archive_file_missing"]);
  });

  it("with ids in another column than eventID finds parents by eventID", async () => {
    const core = { ...EVENT, columns: ["", "eventID", "parentEventID", "eventDate"] };
    const { rows } = await read({
      "meta.xml": metaXml(core, { ...OCCURRENCE, columns: ["", "occurrenceID"] }),
      "event.txt": "id,event,parent,date\n1,a,,2021\n2,b,a,\n",
      "occurrence.txt": "id,o\n2,o1\n",
    });
    expect(bare(rows)).toEqual([{ row: 2, occurrenceID: "o1", eventID: "b", eventDate: "2021" }]);
  });

  it("that states no id is joined by eventID, with a question", async () => {
    const { rows, told } = await read({
      "meta.xml": metaXml({ ...EVENT, id: null }, { ...OCCURRENCE, id: null, columns: ["occurrenceID", "eventID"] }),
      "event.txt": `${EVENTS}e1,,2021,,,,\n`,
      "occurrence.txt": "o,e\no1,e1\n",
    });
    expect(bare(rows)).toEqual([{ row: 2, occurrenceID: "o1", eventID: "e1", eventDate: "2021" }]);
    expect(told).toEqual(["walks.zip:1 archive_description", "walks.zip:1 archive_description"]);
  });
});

describe("a taxon core", () => {
  it("gives its records the name, but not to one with another", async () => {
    const { rows } = await read({
      "meta.xml": metaXml(
        { rowType: "Taxon", file: "taxon.txt", columns: ["taxonID", "scientificName", "scientificNameAuthorship"] },
        { rowType: "Occurrence", file: "occurrence.txt", columns: ["", "occurrenceID", "scientificName"] },
      ),
      "taxon.txt": "id,name,by\nt1,Bombus pratorum,(Linnaeus)\n",
      "occurrence.txt": "id,o,name\nt1,o1,\nt1,o2,Bombus lucorum\nt1,o3,Bombus pratorum\n",
    });
    const taxon = { taxonID: "t1", scientificName: "Bombus pratorum", scientificNameAuthorship: "(Linnaeus)" };
    expect(bare(rows)).toEqual([
      { row: 2, occurrenceID: "o1", ...taxon },
      { row: 3, occurrenceID: "o2", scientificName: "Bombus lucorum" },
      { row: 4, occurrenceID: "o3", ...taxon },
    ]);
  });
});

describe("determinations in a table of their own", () => {
  const determined = (records: string, rows: string): Files => ({
    "meta.xml": metaXml(
      {
        rowType: "Occurrence",
        file: "occurrence.txt",
        columns: ["occurrenceID", "scientificName", "identifiedBy", "dateIdentified", "previousIdentifications"],
      },
      {
        rowType: "Identification",
        file: "identification.txt",
        columns: ["", "scientificName", "identifiedBy", "dateIdentified", "identificationQualifier"],
      },
    ),
    "occurrence.txt": `id,name,by,on,before\n${records}`,
    "identification.txt": `id,name,by,on,qualifier\n${rows}`,
  });

  it("are all kept: the latest is the name, the others go before it", async () => {
    const { rows, told } = await read(
      determined(
        "o1,Bombus lucorum,A,2001-05,Bombus sp.\no2,Apis,,,\n",
        "o1,Bombus terrestris,B,2015-03-02,\no1,Bombus magnus,C,1999,cf.\no1,Bombus lucorum,A,2001-05,\n",
      ),
    );
    expect(bare(rows)).toEqual([
      {
        row: 2,
        occurrenceID: "o1",
        scientificName: "Bombus terrestris",
        identifiedBy: "B",
        dateIdentified: "2015-03-02",
        previousIdentifications: "Bombus sp. | Bombus lucorum (A, 2001-05) | Bombus magnus cf. (C, 1999)",
      },
      { row: 3, occurrenceID: "o2", scientificName: "Apis" },
    ]);
    expect(told).toEqual([]);
  });

  it("leave the record's own name in force where it has no date and no row repeats it", async () => {
    const { rows } = await read(
      determined("o1,Bombus lucorum,A,,\n", "o1,Bombus terrestris,B,2015,\no1,Bombus magnus,,,\n"),
    );
    expect(bare(rows)).toEqual([
      {
        row: 2,
        occurrenceID: "o1",
        scientificName: "Bombus lucorum",
        identifiedBy: "A",
        previousIdentifications: "Bombus terrestris (B, 2015) | Bombus magnus",
      },
    ]);
  });

  it("give way to a later one where a row repeats the record's own, without its date", async () => {
    const { rows } = await read(
      determined("o1,Bombus lucorum,,,\n", "o1,Bombus lucorum,A,2001,\no1,Bombus terrestris,B,2015,\n"),
    );
    expect(rows[0]).toMatchObject({
      scientificName: "Bombus terrestris",
      previousIdentifications: "Bombus lucorum (A, 2001)",
    });
  });

  it("give a record without a name the first where none has a date", async () => {
    const { rows } = await read(determined("o1,,,,\n", "o1,Bombus terrestris,B,,\no1,Bombus magnus,C,,\n"));
    expect(rows[0]).toMatchObject({
      scientificName: "Bombus terrestris",
      identifiedBy: "B",
      previousIdentifications: "Bombus magnus (C)",
    });
  });

  it("of no record, and records of one id, are told", async () => {
    const { rows, told } = await read(determined("o1,Apis,,,\no1,Apis,,,\n", "o1,Bombus,B,2020,\no9,Bombus,B,2020,\n"));
    expect(rows.map(({ previousIdentifications }) => previousIdentifications)).toEqual([
      "Bombus (B, 2020)",
      "Bombus (B, 2020)",
    ]);
    expect(told).toEqual(["walks.zip/identification.txt:3 archive_row_alone", "walks.zip:3 archive_id_repeated"]);
  });
});

describe("media in a table of their own", () => {
  it("are the record's associated media, each once", async () => {
    const { rows } = await read({
      "meta.xml": metaXml(
        { rowType: "Occurrence", file: "occurrence.txt", columns: ["occurrenceID", "associatedMedia"] },
        {
          rowType: "http://rs.gbif.org/terms/1.0/Multimedia",
          file: "multimedia.txt",
          columns: ["", "http://purl.org/dc/terms/identifier", "http://purl.org/dc/terms/references"],
        },
      ),
      "occurrence.txt": "id,media\no1,https://example.org/a.jpg\no2,\no3,\n",
      "multimedia.txt":
        "id,identifier,references\no2,https://example.org/z.jpg,\no2,https://example.org/b.jpg,\no2,https://example.org/z.jpg,\no1,,https://example.org/page\n",
    });
    expect(rows.map(({ associatedMedia }) => associatedMedia)).toEqual([
      "https://example.org/a.jpg | https://example.org/page",
      "https://example.org/z.jpg | https://example.org/b.jpg",
      undefined,
    ]);
  });
});
