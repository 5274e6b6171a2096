import { describe, expect, it } from "vitest";
import { useDatabase } from "../reading.ts";
import { readFiles } from "./archives.ts";

const database = useDatabase();

// Darwin Core text guide (Darwin Core Maintenance Group 2023, https://dwc.tdwg.org/text/, CC BY 4.0), rebuilt from the
// facts of its examples: which column holds which term, what is constant, and how each file is written.
describe("the examples of the text guide", () => {
  it("give two specimens, with a constant of no field", async () => {
    const { rows, parts, told } = await readFiles(database(), {
      "meta.xml": `<?xml version="1.0" encoding="UTF-8"?>
<archive xmlns="http://rs.tdwg.org/dwc/text/" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"
  xsi:schemaLocation="http://rs.tdwg.org/dwc/text/ http://rs.tdwg.org/dwc/text/tdwg_dwc_text.xsd">
  <core rowType="http://rs.tdwg.org/dwc/xsd/simpledarwincore/SimpleDarwinRecord" ignoreHeaderLines="1">
    <files><location>./specimens.csv</location></files>
    <field index="0" term="http://rs.tdwg.org/dwc/terms/catalogNumber"/>
    <field index="1" term="http://rs.tdwg.org/dwc/terms/scientificName"/>
    <field index="2" term="http://rs.tdwg.org/dwc/terms/individualCount"/>
    <field term="http://rs.tdwg.org/dwc/terms/datasetID" default="urn:lsid:example.org:collections:1"/>
  </core>
</archive>`,
      "specimens.csv":
        'ID,Species,Count\n123,"Cryptantha gypsophila Reveal & C.R. Broome",12\n124,"Buxbaumia piperi",2 \n',
    });
    expect(rows).toEqual([
      {
        part: "walks.zip",
        row: 2,
        catalogNumber: "123",
        scientificName: "Cryptantha gypsophila Reveal & C.R. Broome",
        individualCount: "12",
      },
      { part: "walks.zip", row: 3, catalogNumber: "124", scientificName: "Buxbaumia piperi", individualCount: "2" },
    ]);
    expect(parts[0]?.result).toMatchObject({ records: 2, read: 2, unreadable: 0, lastRow: 3, numbering: "column" });
    expect(told).toEqual(["walks.zip:1 unused_terms"]);
  });

  it("give no record where they are a list of whales, and say what they hold", async () => {
    const { rows, parts, findings } = await readFiles(database(), {
      "meta.xml": `<archive xmlns="http://rs.tdwg.org/dwc/text/">
  <core encoding="UTF-8" fieldsTerminatedBy="\\t" linesTerminatedBy="\\n" ignoreHeaderLines="1" rowType="http://rs.tdwg.org/dwc/terms/Taxon">
    <files><location>whales.txt</location></files>
    <id index="0"/>
    <field index="0" term="http://rs.tdwg.org/dwc/terms/taxonID"/>
    <field index="2" term="http://rs.tdwg.org/dwc/terms/scientificName"/>
  </core>
  <extension encoding="UTF-8" fieldsTerminatedBy="," fieldsEnclosedBy='"' ignoreHeaderLines="1" rowType="http://rs.gbif.org/terms/1.0/Types">
    <files><location>types.csv</location></files>
    <coreId index="0"/>
    <field index="2" term="http://rs.tdwg.org/dwc/terms/catalogNumber"/>
  </extension>
  <extension encoding="UTF-8" fieldsTerminatedBy="," fieldsEnclosedBy='"' ignoreHeaderLines="1" rowType="http://rs.gbif.org/terms/1.0/Distribution">
    <files><location>distribution.csv</location></files>
    <coreId index="0"/>
    <field index="1" term="http://rs.tdwg.org/dwc/terms/countryCode"/>
  </extension>
</archive>`,
      "whales.txt": "taxonID\tmodified\tscientificName\nw1\t2001\tBalaena mysticetus\n",
      "types.csv": 'id,citation,catalogNumber\nw1,"a, b",7\n',
      "distribution.csv": "id,countryCode\nw1,GL\n",
    });
    expect(rows).toEqual([]);
    expect(parts).toHaveLength(1);
    expect(findings.map(({ check, value, message }) => [check, value, message])).toEqual([
      ["archive_table_unused", "types.csv", "the table holds rows of type Types and is not used"],
      ["archive_table_unused", "distribution.csv", "the table holds rows of type Distribution and is not used"],
      [
        "archive_without_records",
        "http://rs.tdwg.org/dwc/terms/Taxon",
        "the archive holds no table of occurrences; its core holds rows of type Taxon",
      ],
    ]);
  });

  it("reads the whales’ tab-separated core with an extension of occurrences in CSV", async () => {
    const { rows } = await readFiles(database(), {
      "meta.xml": `<archive xmlns="http://rs.tdwg.org/dwc/text/">
  <core encoding="UTF-8" fieldsTerminatedBy="\\t" linesTerminatedBy="\\n" ignoreHeaderLines="1" rowType="http://rs.tdwg.org/dwc/terms/Taxon">
    <files><location>whales.txt</location></files>
    <id index="0"/>
    <field index="0" term="http://rs.tdwg.org/dwc/terms/taxonID"/>
    <field index="2" term="http://rs.tdwg.org/dwc/terms/scientificName"/>
  </core>
  <extension encoding="UTF-8" fieldsTerminatedBy="," fieldsEnclosedBy='"' ignoreHeaderLines="1" rowType="http://rs.tdwg.org/dwc/terms/Occurrence">
    <files><location>sightings.csv</location></files>
    <coreId index="0"/>
    <field index="1" term="http://rs.tdwg.org/dwc/terms/locality"/>
  </extension>
</archive>`,
      "whales.txt": "taxonID\tmodified\tscientificName\nw1\t2001\tBalaena mysticetus\n",
      "sightings.csv": 'id,locality\nw1,"Disko Bay, ice edge"\n',
    });
    expect(rows).toEqual([
      {
        part: "walks.zip",
        row: 2,
        taxonID: "w1",
        scientificName: "Balaena mysticetus",
        locality: "Disko Bay, ice edge",
      },
    ]);
  });
});
