import { globSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { gridNamed } from "../../../src/grids/index.ts";
import { knownTruthFile } from "../../../src/publishing/known-truth-file.ts";
import { PUBLISHED_TABLES } from "../../../src/publishing/published-tables.ts";
import { findingTitle, isFindingTitled } from "../../../src/records/finding-titles.ts";
import { REASONS } from "../../../src/records/reasons.ts";
import { ENGLISH, type Key } from "../../../src/site/words/catalogue.ts";
import { markEnglish } from "../../../src/site/words/fallback.ts";
import { formatMessage } from "../../../src/site/words/message.ts";
import { isPublishedText, sayPublished } from "../../../src/site/words/published-text.ts";
import { say } from "../../../src/site/words/say.ts";

/** Sources that say in English why a figure is not given, a record fills no square or a claim is withdrawn. */
const SOURCES = [
  "src/measures/**/*.ts",
  "src/measures/public-records.sql",
  "src/publishing/change-rows.ts",
  "src/publishing/claims.ts",
  "src/records/supported-squares.ts",
  "src/scheme/generalisations.ts",
];
/** Names of evidence sets, for which the pages have words of their own, and what only programmers see. */
const OF_NO_PAGE = /evidence-sets|generalise\.ts/;

/** What may stand where a source puts something into a text. */
function filled(text: string): string {
  return text
    .replace(/\$\{counted\([^"]*"([\w ]+)"\)\}/g, "3 $1s")
    .replace(/\$\{[^}]*\? "[\w ]+" : "([\w ]+)"\}/g, "$1")
    .replace(/\$\{percent\([^}]*\}/g, "3 %")
    .replace(/\$\{(?:from|to)\}(?= (?:and|of its))/g, "3 %")
    .replace(/\$\{some\}/, "some of ")
    .replace(/\$\{[^}]*many\[1\]\}/g, "records")
    .replace(/\$\{visits\}; /, "3 visits; ")
    .replace(/\$\{[^}]*\}/g, "3");
}

/** Texts of a source that may be a reason: words in small letters, with at least three of them. */
function reasonsOf(file: string): string[] {
  const source = readFileSync(file, "utf8")
    .replace(/\/\*[\s\S]*?\*\//g, "")
    .replace(/^\s*(?:\/\/|--).*$/gm, "");
  return [...source.matchAll(/`((?:\$\{[^}]*\}|[^`$\\])*)`|(["'])((?:(?!\2)[^\\\n])*)\2/g)]
    .map(([, template, , plain]) => filled(template ?? plain ?? ""))
    .filter(
      (text) =>
        /^(?:\d|[a-z])(?:[^A-Z=<>_\n]|WGS|C[A-Z]S)* [a-z]+ [a-z ]*[a-z:]/.test(text) &&
        !/[=<>_/]/.test(text.replace("season.year_starts", "")),
    );
}

beforeEach(() => vi.stubEnv("ATLAS_LANGUAGE", "fr"));
afterEach(() => vi.unstubAllEnvs());

/** Keys whose messages are texts of the tables. */
const KEYS = (Object.keys(ENGLISH) as Key[]).filter((key) => /^(?:reason|fate|check|table)\./.test(key));
const unknown = (texts: readonly string[]) => texts.filter((text) => !isPublishedText(text));

describe("English text of the published tables", () => {
  it("is known wherever a source gives a reason", () => {
    const files = SOURCES.flatMap((pattern) => globSync(pattern)).filter((file) => !OF_NO_PAGE.test(file));
    const reasons = files.flatMap(reasonsOf);
    expect(reasons.length).toBeGreaterThan(50);
    expect(unknown(reasons)).toEqual([]);
  });
  it("is known for what became of a record, what checks find, and titles of files", () => {
    expect(unknown(Object.values(REASONS))).toEqual([]);
    const titled = KEYS.map((key) => key.replace(/^\w+\./, "").replaceAll("-", "_")).filter(isFindingTitled);
    expect(titled.length).toBeGreaterThan(100);
    expect(unknown(titled.map(findingTitle))).toEqual([]);
    expect(unknown(PUBLISHED_TABLES.map(({ title }) => title))).toEqual([]);
  });
  it("is known for the trials of the known truth and the grids", () => {
    const { made, rows, claims } = knownTruthFile();
    expect(
      unknown([made, ...rows.map(({ label }) => label), ...claims.map(({ reason }) => reason).filter(Boolean)]),
    ).toEqual([]);
    const grids = (["british", "irish", "channel-islands", "laea", "mgrs"] as const).map(
      (id) => gridNamed(id, {}).name,
    );
    expect(unknown(grids)).toEqual([]);
  });
  it("is said in the language of the page with its numbers, and is the same on English pages", () => {
    expect(sayPublished("1200 comparable squares; 20 are needed")).toBe("1\u00a0200 carrés comparables, il en faut 20");
    expect(sayPublished("too few benchmark taxa: 3.4 a square in the mean, 5 are needed")).toContain("3,4 par carré");
    expect(sayPublished("no lists declared complete in the years until 1989")).toBe(
      "aucune liste déclarée complète pour les années jusqu’en 1989",
    );
    expect(sayPublished("12.5 % of unchanged species were called changed where effort doubles")).toBe(
      "12,5\u00a0% d’espèces inchangées furent déclarées changées (cas\u00a0: l’effort double)",
    );
    vi.stubEnv("ATLAS_LANGUAGE", "en-GB");
    expect(sayPublished("1200 comparable squares; 20 are needed")).toBe("1200 comparable squares; 20 are needed");
  });
  it("stays English and is marked where no message knows it", () => {
    expect(sayPublished("a reason of tomorrow")).toBe(markEnglish("a reason of tomorrow"));
    expect(sayPublished("")).toBe("");
  });
  it("gives back every number it was made with", () => {
    const counts = {
      key: fc.constantFrom(...KEYS.filter((key) => ENGLISH[key].includes("{"))),
      n: fc.integer({ min: 0, max: 99_999 }),
    };
    fc.assert(
      fc.property(fc.record(counts), ({ key, n }) => {
        const values = Object.fromEntries([...ENGLISH[key].matchAll(/\{(\w+)/g)].map(([, name]) => [name ?? "", n]));
        expect(sayPublished(formatMessage(ENGLISH[key], "en-GB", values))).toBe(say(key, values));
      }),
    );
  });
});
