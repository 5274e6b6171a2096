import { describe, expect, it } from "vitest";
import { Settings } from "../../src/scheme/settings.ts";
import { checkSettings } from "../../src/scheme/settings-agree.ts";
import { readYaml } from "../../src/scheme/yaml-file.ts";
import { mistakeOf } from "./mistakes.ts";

const SMALL = `title: Small atlas
edition: { id: "1", date: 2025-03-01 }
periods:
  - { id: earlier, from: 1990, to: 2005 }
  - { id: recent, from: 2006, to: 2024 }
territories:
  - { id: britain, name: Britain, grid: british }
sources:
  - id: walks
    files: records/walks.csv
`;

function read(text: string): Settings {
  const { value, at } = readYaml(text, "atlas.yaml", Settings);
  checkSettings(value, at);
  return value;
}

const wrong = (from: string, to: string) => {
  if (!SMALL.includes(from)) throw new Error(`the small atlas has no ${from}`);
  return mistakeOf(() => read(SMALL.replace(from, to)));
};

describe("settings", () => {
  it("need little, and fill in the rest", () => {
    expect(mistakeOf(() => read(SMALL))).toBe("no mistake");
    expect(read(SMALL)).toMatchObject({
      placing: { minimum_overlap: 0.9, default_uncertainty_m: 100 },
      language: "en-GB",
      invented: false,
    });
  });

  it("keep the letters NO a text, for YAML 1.2 has no other false than false", () => {
    expect(read(SMALL.replace("title: Small atlas", "title: NO")).title).toBe("NO");
    expect(read(SMALL.replace("files: records", "project: NO\n    files: records")).sources[0]?.project).toBe("NO");
    expect(wrong("title: Small atlas", "title: Small atlas\ninvented: yes")).toMatch(
      /invented is "yes"; write true or false/,
    );
  });

  it.each([
    ["from: 1990", "from: 199O", 'atlas.yaml:4:26: periods[0].from is "199O"; write a whole number'],
    ["to: 2005", "to: 2005.5", "atlas.yaml:4:36: periods[0].to is 2005.5; write a whole number"],
    [", to: 2024", "", "atlas.yaml:5:5: periods[1].to is missing; write a whole number: last year, inclusive"],
    ["title: Small atlas\n", "", "atlas.yaml:1:1: title is missing; write text: name of the atlas"],
    [
      "title: Small atlas",
      "titel: Small atlas",
      "atlas.yaml:1:1: title is missing; write text: name of the atlas (and 1 more after it)",
    ],
    [
      "title: Small atlas",
      "title: Small atlas\nacent: {}",
      "atlas.yaml:2:1: the file has “acent”; there is no such setting; did you mean accent?",
    ],
    [
      "grid: british",
      "grid: British",
      'atlas.yaml:7:41: territories[0].grid is "British"; write one of british, irish, channel-islands, laea, mgrs',
    ],
    [
      "records/walks.csv",
      "../walks.csv",
      'atlas.yaml:10:12: sources[0].files is "../walks.csv"; use a path inside the scheme\'s folder',
    ],
    [
      "records/walks.csv",
      "C:\\walks.csv",
      'atlas.yaml:10:12: sources[0].files is "C:\\\\walks.csv"; use a path inside the scheme\'s folder',
    ],
    ["records/walks.csv", "5", "atlas.yaml:10:12: sources[0].files is 5; write text, or a list, as in [a, b]"],
    [
      "id: walks",
      "id: My walks",
      'atlas.yaml:9:9: sources[0].id is "My walks"; use lower-case letters, figures, - and _',
    ],
    [
      "2025-03-01",
      "2025-02-30",
      'atlas.yaml:2:27: edition.date is "2025-02-30"; write a date that exists as year-month-day, such as 2025-03-01',
    ],
    [
      "2025-03-01 }",
      '2025-03-01 }\naccent: { light: red, dark: "#ffffff" }',
      'atlas.yaml:3:18: accent.light is "red"; write a colour in quotation marks, such as "#8c2467"',
    ],
    [
      "2025-03-01 }",
      "2025-03-01 }\nplacing: { minimum_overlap: 0.2 }",
      "atlas.yaml:3:29: placing.minimum_overlap is 0.2; write a number from 0.5 on",
    ],
    [
      "2025-03-01 }",
      "2025-03-01 }\nplacing: 0.9",
      "atlas.yaml:3:10: placing is 0.9; write a group of settings, each as key: value",
    ],
    [
      "2025-03-01 }",
      "2025-03-01 }\ncompared: [earlier]",
      "atlas.yaml:3:11: compared is a list of 1; give at least 2 in the list",
    ],
    [
      "2025-03-01 }",
      "2025-03-01 }\ncompared: [earlier, later]",
      "atlas.yaml:3:21: compared “later” is no period; write two of earlier, recent",
    ],
    [
      "from: 2006",
      "from: 2000",
      "atlas.yaml:5:25: period recent starts in 2000, when earlier has not ended (2005); put periods in order without overlap",
    ],
    [
      "from: 1990, to: 2005",
      "from: 1990, to: 1905",
      "atlas.yaml:4:36: period earlier ends in 1905, before its start 1990; correct one of the years",
    ],
    ["id: recent", "id: earlier", "atlas.yaml:5:11: periods: id “earlier” is there twice; give each its own id"],
    [
      "id: recent",
      "id: outside",
      "atlas.yaml:5:11: periods: id “outside” means something else in the tables; give it another id",
    ],
    [
      "id: walks",
      "id: walks\n    datum: Bessel",
      "atlas.yaml:10:12: source walks: datum is “Bessel”, which is not known here; write a code such as EPSG:4326 or EPSG:27700",
    ],
    [
      "id: walks",
      "id: walks\n    columns: { species: Art }",
      "atlas.yaml:10:16: sources[0].columns has “species”; there is no such setting; take it out, or write one of occurrenceID",
    ],
    [
      "id: walks",
      "id: walks\n    delimiter: ';;'",
      'atlas.yaml:10:16: sources[0].delimiter is ";;"; write one character, in quotation marks: ",", ";", "|" or "\\t"',
    ],
    [
      "title: Small atlas",
      "title: Small atlas\ncastes:\n  - { id: worker, label: Worker, words: [w], within: lady }",
      "atlas.yaml:3:54: caste worker is within “lady”, which is no caste; name another caste, or leave within out",
    ],
    ["title: Small atlas", "title: [unclosed", "atlas.yaml:2:1: the YAML cannot be read: "],
    [
      "title: Small atlas",
      "title: a\ntitle: b",
      "atlas.yaml:2:1: the YAML cannot be read: Map keys must be unique; mend the line",
    ],
    ["title: Small atlas", "title: *nothing", "atlas.yaml: the YAML cannot be read: Unresolved alias"],
  ])("say what is wrong with %j become %j", (from, to, message) => {
    expect(wrong(from, to).slice(0, message.length)).toBe(message);
  });

  it("that are empty or a list say so", () => {
    expect(mistakeOf(() => read(""))).toBe(
      "atlas.yaml:1:1: title is missing; write text: name of the atlas (and 4 more after it)",
    );
    expect(mistakeOf(() => read("- a\n- b\n"))).toBe(
      "atlas.yaml:1:1: the file is a list of 2; write a group of settings, each as key: value",
    );
  });
});
