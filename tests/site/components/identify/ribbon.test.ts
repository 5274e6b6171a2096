import { describe, expect, it } from "vitest";
import type { Character } from "../../../../src/publishing/contracts.ts";
import { bodyPlan } from "../../../../src/site/components/identify/body-plan.ts";
import { saysBody } from "../../../../src/site/components/identify/body-says.ts";
import {
  bodyInWords,
  describedRows,
  differs,
  partState,
  ribbonColumns,
} from "../../../../src/site/components/identify/ribbon.ts";
import { FIXTURE_TAXA } from "../../../support/published/fixture-taxa.ts";

const rows = bodyPlan("bee")?.rows ?? [];
const labels = new Map([
  ["queen", "Queen"],
  ["worker", "Worker"],
  ["male", "Male"],
  ["female", "Female"],
]);

function character(part: string, state: string, more: Partial<Character> = {}): Character {
  return { castes: [], form: "", part, state, note: "", reliability: "supports", evidence: "sight", ...more };
}

describe("partState", () => {
  it("reads one colour, two, none and a word", () => {
    expect(partState([character("T1", "red")])).toEqual({
      words: "red",
      piles: ["red"],
      mark: undefined,
      absent: false,
    });
    expect(partState([character("T1", "absent")])).toEqual({ words: "none", piles: [], mark: undefined, absent: true });
    expect(partState([character("T1", "none")])).toEqual({ words: "none", piles: [], mark: undefined, absent: true });
    expect(partState([character("T1", "iridescent")])).toEqual({
      words: "iridescent",
      piles: [],
      mark: undefined,
      absent: false,
    });
    expect(partState([])).toBeUndefined();
  });
  it("reads a dark mark on a colour, and takes no colour from a phrase", () => {
    expect(partState([character("T3", "yellow sides")])).toMatchObject({
      words: "yellow sides",
      piles: ["yellow"],
      mark: "sides",
    });
    expect(partState([character("S2", "stalked")])).toMatchObject({ piles: [], mark: "stalked" });
    expect(partState([character("wing-base", "a few black hairs")])).toMatchObject({ piles: [], mark: undefined });
  });
  it("names both colours of a part that varies, from its rows or from the note", () => {
    const both = { words: "yellow or black", piles: ["yellow", "black"], mark: undefined, absent: false };
    expect(partState([character("T1", "varies", { note: "yellow or black: narrow, white at times." })])).toEqual(both);
    expect(partState([character("T1", "varies"), character("T1", "yellow"), character("T1", "black")])).toEqual(both);
    expect(partState([character("T1", "varies", { note: "much." })])).toEqual({
      words: "varies",
      piles: [],
      mark: undefined,
      absent: false,
    });
  });
});

describe("ribbonColumns", () => {
  it("gives castes that look alike one column", () => {
    const characters = [
      character("face", "black", { castes: ["queen", "worker"] }),
      character("face", "yellow", { castes: ["male"] }),
      character("collar", "black"),
    ];
    const columns = ribbonColumns({ castes: ["queen", "worker", "male"], characters }, rows, labels, saysBody);
    expect(columns.map(({ label }) => label)).toEqual(["Queen, worker", "Male"]);
    expect(columns.map(({ states }) => states.get("face")?.words)).toEqual(["black", "yellow"]);
    expect(differs(columns[0] as never, columns[1] as never, "face")).toBe(true);
    expect(differs(columns[0] as never, columns[1] as never, "collar")).toBe(false);
    expect(describedRows(rows, columns).map(({ id }) => id)).toEqual(["face", "collar"]);
  });
  it("fills a colour form from the usual one and leaves out what misleads", () => {
    const characters = [
      character("face", "black"),
      character("T4", "white"),
      character("T4", "black", { form: "black" }),
      character("T4", "grey", { form: "dark", reliability: "misleads" }),
    ];
    const columns = ribbonColumns({ castes: ["queen", "male"], characters }, rows, labels, saysBody);
    expect(columns.map(({ label }) => label)).toEqual(["All castes", "Black form"]);
    expect(columns.map(({ states }) => [states.get("face")?.words, states.get("T4")?.words])).toEqual([
      ["black", "white"],
      ["black", "black"],
    ]);
  });
  it("shows how an age looks, after all colour forms, in one column of its first castes", () => {
    const characters = [
      character("face", "black", { castes: ["queen"] }),
      character("face", "yellow", { castes: ["male"] }),
      character("T4", "ginger"),
      character("T4", "buff", { form: "worn", reliability: "misleads" }),
      character("T4", "black", { form: "island", castes: ["male"] }),
    ];
    const columns = ribbonColumns({ castes: ["queen", "male"], characters }, rows, labels, saysBody);
    expect(columns.map(({ label, form }) => [label, form])).toEqual([
      ["Queen", ""],
      ["Male", ""],
      ["Male, island form", "island"],
      ["Queen, worn", "worn"],
    ]);
    expect(columns.map(({ states }) => states.get("T4")?.words)).toEqual(["ginger", "ginger", "black", "buff"]);
  });
  it("has one column for a taxon without castes, empty where nothing is described", () => {
    const [column, ...more] = ribbonColumns({ castes: [], characters: [] }, rows, labels, saysBody);
    expect([column?.label, column?.states.size, more.length]).toEqual(["Adult", 0, 0]);
  });
  it("reads part ids in any case", () => {
    const [column] = ribbonColumns({ castes: [], characters: [character("t4", "red")] }, rows, labels, saysBody);
    expect(column?.states.get("T4")?.words).toBe("red");
  });
});

describe("bodyInWords", () => {
  it("takes neighbouring rows of one colour together", () => {
    const pattern = FIXTURE_TAXA[0]?.female.split(" ") ?? [];
    const parts = rows.filter(({ id }) => id !== "eyes" && id !== "antennae");
    const characters = parts.map(({ id }, index) => character(id, pattern[index] ?? ""));
    const [column] = ribbonColumns({ castes: [], characters }, rows, labels, saysBody);
    expect(column === undefined ? "" : bodyInWords(column, rows, saysBody)).toBe(
      "Face to T3 black; T4 to T6 red; hind leg black; wings clear.",
    );
  });
});
