import { describe, expect, it } from "vitest";
import { readDescription } from "../../../src/records/archive/read-description.ts";

const archive = (content: string) => `<archive xmlns="http://rs.tdwg.org/dwc/text/">${content}</archive>`;
const CORE = '<core rowType="x"><files><location>a.txt</location></files></core>';

// Elements, attributes and defaults: Darwin Core text guide (2023) §2 and tdwg_dwc_text.xsd.
describe("a description", () => {
  it("has the guide's defaults", () => {
    expect(readDescription(archive(CORE))).toEqual({
      metadata: "",
      core: {
        rowType: "x",
        locations: ["a.txt"],
        encoding: "UTF-8",
        fieldsTerminatedBy: ",",
        linesTerminatedBy: "\n",
        fieldsEnclosedBy: '"',
        ignoreHeaderLines: 0,
        dateFormat: "",
        id: undefined,
        fields: [],
      },
      extensions: [],
      faults: [],
    });
  });

  it("writes special characters out", () => {
    const { core } = readDescription(
      archive(`<core rowType="x" fieldsTerminatedBy="\\t" linesTerminatedBy="\\r\\n" fieldsEnclosedBy='\\"'/>`),
    );
    expect(core).toMatchObject({ fieldsTerminatedBy: "\t", linesTerminatedBy: "\r\n", fieldsEnclosedBy: '"' });
    expect(
      readDescription(archive('<core rowType="x" fieldsTerminatedBy="&#9;" fieldsEnclosedBy=""/>')).core,
    ).toMatchObject({
      fieldsTerminatedBy: "\t",
      fieldsEnclosedBy: "",
    });
  });

  it("may have a prefix, and elements of other namespaces", () => {
    const { core, metadata } = readDescription(
      `<?xml version="1.0"?><!-- made by hand --><a:archive xmlns:a="http://rs.tdwg.org/dwc/text/" xmlns:b="urn:b" metadata="eml.xml">
        <b:core rowType="no"/><a:core rowType="yes"><a:files><a:location><![CDATA[a&b.txt]]></a:location></a:files><b:field term="no"/></a:core></a:archive>`,
    );
    expect(metadata).toBe("eml.xml");
    expect(core).toMatchObject({ rowType: "yes", locations: ["a&b.txt"], fields: [] });
  });

  it("binds columns, constants and values for empty cells", () => {
    const { core, extensions } = readDescription(
      archive(`<core rowType="x"><id index="2"/><field index="0" term="t0"/><field term="t1" default="d"/><field index="1" term="t2" default="e"/></core>
        <extension rowType="y"><coreid index="1"/></extension><extension rowType="z"><coreId index="3"/></extension>`),
    );
    expect(core?.id).toBe(2);
    expect(core?.fields).toEqual([
      { term: "t0", index: 0, default: "" },
      { term: "t1", index: undefined, default: "d" },
      { term: "t2", index: 1, default: "e" },
    ]);
    expect(extensions.map(({ id }) => id)).toEqual([1, 3]);
  });

  it("tells faults that leave a sense", () => {
    const { faults } = readDescription(
      archive(
        `${CORE}${CORE}<extension ignoreHeaderLines="one"><coreid index="-1"/><field index="first" term="t"/><field index="1"/></extension>`,
      ),
    );
    expect(faults).toEqual([
      "there is more than one core; the first counts",
      "ignoreHeaderLines is “one”, taken as 0",
      "extension states no rowType",
      "index “-1” of coreid is no column",
      "index “first” of t is no column",
      "a field states no term",
    ]);
  });

  it.each([
    ["a document type", '<!DOCTYPE archive SYSTEM "http://example.org/a.dtd"><archive/>', "document type"],
    ["entities", '<!DOCTYPE a [<!ENTITY b "c">]><archive xmlns="http://rs.tdwg.org/dwc/text/"/>', "document type"],
    ["an undefined entity", archive("<core rowType='&evil;'/>"), "entity"],
    ["an unclosed element", '<archive xmlns="http://rs.tdwg.org/dwc/text/"><core>', "Unclosed"],
    ["a character that is none", archive("<core rowType='&#0;'/>"), "character entity"],
    ["an undefined prefix", "<a:archive/>", "namespace"],
    ["another root", "<html/>", "first element is html"],
    ["nothing", "", "it is empty"],
  ])("with %s is refused", (_, text, why) => {
    expect(() => readDescription(text)).toThrow(why);
  });
});
