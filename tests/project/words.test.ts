import { describe, expect, it } from "vitest";
import { filesBelow, read } from "./source-files.ts";

/**
 * Words that readers and recorders would take for something else, and what to write. Left: as a pattern, any case.
 * The reasons are common practice among recording schemes, not a source.
 */
const AVOIDED: readonly (readonly [RegExp, string])[] = [
  [/\brejected\b/i, "not used, with the reason: rejected reads as a verdict on a person"],
  [/\b(im)?plausib(le|ly|ility)\b/i, "unexpected here and now: a question, not a verdict"],
  [/\bhot-?spots?\b/i, "rich squares: hot spots are mostly where people look"],
  [/\b(leader-?boards?|badges?|top recorders?)\b/i, "thanks in alphabetical order: ranking people distorts recording"],
  [/\b(blurred|obscured|geoprivacy)\b/i, "shown at 10 km: a coarser square is no blur"],
  [/\bunder-?recorded\b|\bwhite squares?\b/i, "squares that want a visit"],
  [/\b(recorded|expected|seen) nearby\b/i, "the square and the year, or the distance"],
  [/\bneeds id\b|\bcasual (record|observation)s?\b/i, "waiting for identification; single-species record"],
  [/\bflying this week\b/i, "in season here"],
  [/\bwhat could it be\b/i, "narrow it down"],
  [/\bextinct in (this|the) square\b|\blost from\b/i, "not refound: a blank is no proof of absence"],
];

/** What people read: pages, texts, settings and documents, and the texts that sources put together. */
const READ_BY_PEOPLE = [
  "README.md",
  "DEVELOPERS.md",
  ...filesBelow("content").filter((path) => /\.(md|yaml)$/.test(path)),
  ...filesBelow("src").filter((path) => /\.(ts|astro|md|yaml)$/.test(path)),
];

/** Lines of a file that people could read; comments of code are for developers. */
function linesOf(path: string): string[] {
  return read(path)
    .split("\n")
    .map((line, i) => `${path}:${i + 1}: ${line}`)
    .filter((line) => !/^[^ ]+ \s*(\/\/|\*|\/\*)/.test(line) || !/\.(ts|astro):/.test(line));
}

describe("words", () => {
  const lines = READ_BY_PEOPLE.flatMap(linesOf);

  it("are read from pages, texts and settings", () => {
    expect(lines.length).toBeGreaterThan(1000);
    expect(lines.some((line) => line.startsWith("content/atlas.yaml:1: "))).toBe(true);
  });

  it.each(AVOIDED.map(([pattern, instead]) => ({ instead, pattern })))("say $instead", ({ pattern }) => {
    expect(lines.filter((line) => pattern.test(line))).toEqual([]);
  });

  it("name no folder of the machine they were written on", () => {
    expect(
      lines.filter((line) => /(^|[\s"'`(])(\/work\/|\/root\/|\.\.\/shared\b)/.test(line.replace(/^[^ ]+ /, ""))),
    ).toEqual([]);
  });
});
