import { describe, expect, it } from "vitest";
import { conditionsOf, notKept } from "../../src/review/licences.ts";

// What each licence asks for, and how they are written: the summaries and addresses at creativecommons.org, the Open
// Government Licence 3.0 of The National Archives, Open Data Commons, and the identifiers of the SPDX licence list.
describe("conditionsOf", () => {
  it.each([
    ["https://creativecommons.org/publicdomain/zero/1.0/", []],
    ["CC0-1.0", []],
    ["CC0 1.0", []],
    ["public domain", []],
    ["http://creativecommons.org/licenses/by/4.0/legalcode", ["attribution"]],
    ["CC-BY-4.0", ["attribution"]],
    ["CC BY 4.0", ["attribution"]],
    ["CC_BY_NC_4_0", ["attribution", "no commercial use"]],
    [
      "https://creativecommons.org/licenses/by-nc-nd/4.0/deed.en",
      ["attribution", "no commercial use", "no adaptations"],
    ],
    ["CC-BY-SA-4.0", ["attribution", "share alike"]],
    ["Creative Commons Attribution Non Commercial (CC-BY-NC) 4.0 License", ["attribution", "no commercial use"]],
    ["Creative Commons Attribution-NonCommercial 4.0 International", ["attribution", "no commercial use"]],
    ["OGL-UK-3.0", ["attribution"]],
    ["Open Government Licence v3.0", ["attribution"]],
    ["ODbL-1.0", ["attribution", "database share alike"]],
    ["ODC-By-1.0", ["attribution"]],
    ["PDDL-1.0", []],
    ["© the museum, all rights reserved", ["permission"]],
  ])("%s", (text, conditions) => {
    expect(conditionsOf(text)).toEqual(conditions);
  });

  it("knows none in other texts", () => {
    expect(conditionsOf("see website")).toBeUndefined();
    expect(conditionsOf("https://creativecommons.org/licenses/sampling/1.0/")).toBeUndefined();
    expect(conditionsOf("")).toBeUndefined();
  });
});

describe("notKept", () => {
  const kept = (data: string, atlas: string) => notKept(conditionsOf(data) ?? [], conditionsOf(atlas) ?? []);

  it("lets data go under a licence that asks for as much or more", () => {
    expect(kept("CC0-1.0", "CC-BY-4.0")).toEqual([]);
    expect(kept("OGL-UK-3.0", "CC-BY-4.0")).toEqual([]);
    expect(kept("CC-BY-4.0", "CC-BY-NC-4.0")).toEqual([]);
    expect(kept("CC-BY-SA-4.0", "CC-BY-SA-4.0")).toEqual([]);
  });

  it("names what a looser licence would lose", () => {
    expect(kept("CC-BY-4.0", "CC0-1.0")).toEqual(["attribution"]);
    expect(kept("CC-BY-NC-4.0", "CC-BY-4.0")).toEqual(["no commercial use"]);
    expect(kept("CC-BY-SA-4.0", "CC-BY-4.0")).toEqual(["share alike"]);
    expect(kept("ODbL-1.0", "CC-BY-SA-4.0")).toEqual(["database share alike"]);
  });

  it("lets nothing go that allows no adaptations, or is not licensed at all", () => {
    expect(kept("CC-BY-ND-4.0", "CC-BY-ND-4.0")).toEqual(["no adaptations"]);
    expect(kept("all rights reserved", "CC-BY-NC-4.0")).toEqual(["permission"]);
  });
});
