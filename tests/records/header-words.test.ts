import { describe, expect, it } from "vitest";
import { fieldsByWords } from "../../src/records/header-words.ts";

// What people head columns with is common practice, without a source.
describe("the words of a header", () => {
  it.each([
    ["Site_name", ["locality"]],
    ["recorderName", ["recordedBy"]],
    ["Grid ref.", ["gridReference"]],
    ["Année", ["year"]],
    ["VC", ["viceCounty"]],
    ["Name", ["scientificName"]],
    ["Art der Meldung", []],
    ["How long", []],
    ["Particular", []],
    ["", []],
  ])("%j are of %j", (header, fields) => {
    expect(fieldsByWords(header)).toEqual(fields);
  });
});
