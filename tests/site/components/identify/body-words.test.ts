import { afterEach, describe, expect, it } from "vitest";
import { bodyPlan } from "../../../../src/site/components/identify/body-plan.ts";
import { saysBody } from "../../../../src/site/components/identify/body-says.ts";
import { formName, isAge, partName, rowName, stateName } from "../../../../src/site/components/identify/body-words.ts";
import { bodyInWords, ribbonColumns } from "../../../../src/site/components/identify/ribbon.ts";
import { CATALOGUES } from "../../../../src/site/words/catalogue.ts";

const before = process.env["ATLAS_LANGUAGE"];
afterEach(() => {
  if (before === undefined) delete process.env["ATLAS_LANGUAGE"];
  else process.env["ATLAS_LANGUAGE"] = before;
});

describe("words of a body", () => {
  it("name parts, states and forms in English", () => {
    expect(["hind-leg", "T2", "t2", "halter-knob"].map((part) => partName(part, saysBody))).toEqual([
      "hind leg",
      "T2",
      "T2",
      "halter knob",
    ]);
    expect(rowName("hind-leg", saysBody)).toBe("Hind leg");
    expect(
      ["black", "yellow sides", "yellow or black", "3 equal to 5", "half-dark", "none"].map((state) =>
        stateName(state, saysBody),
      ),
    ).toEqual(["black", "yellow sides", "yellow or black", "3 equal to 5", "half dark", "none"]);
    expect(["worn", "island", "spring", "young"].map((form) => [formName(form, saysBody), isAge(form)])).toEqual([
      ["worn", true],
      ["island form", false],
      ["spring form", false],
      ["young", true],
    ]);
  });
  it("name them in French, and leave what the scheme wrote in words of its own", () => {
    process.env["ATLAS_LANGUAGE"] = "fr";
    expect(
      ["black", "yellow sides", "yellow or black", "3 equal to 5"].map((state) => stateName(state, saysBody)),
    ).toEqual(["noir", "jaune, côtés", "jaune ou noir", "3 equal to 5"]);
    const rows = bodyPlan("bee")?.rows ?? [];
    const character = (part: string, state: string) => ({
      part,
      state,
      castes: [],
      form: "",
      note: "",
      reliability: "supports" as const,
      evidence: "sight",
    });
    const characters = [character("face", "black"), character("collar", "black"), character("T4", "red")];
    const [column] = ribbonColumns({ castes: [], characters }, rows, new Map(), saysBody);
    const said = column === undefined ? "" : bodyInWords(column, rows, saysBody);
    expect(said.replace(/\s/gu, " ")).toBe("Face à collier : noir ; T4 : rouge.");
  });
  it("ask nothing of the catalogue for what is no word", () => {
    for (const strange of ["{n}", "<b>", "a{b", "'", "__proto__", "toString"]) {
      expect(partName(strange, saysBody)).toBe(strange);
      expect(stateName(strange, saysBody)).toBe(strange);
    }
  });
  it("fit a cell on a telephone: words of at most eight letters in every language", () => {
    for (const [tag, messages] of Object.entries(CATALOGUES))
      for (const [key, message] of Object.entries(messages))
        if (/^body\.(?:state|mark)\./.test(key))
          for (const word of message.split(/[ -]/)) expect(word.length, `${tag} ${key}`).toBeLessThanOrEqual(8);
  });
});
