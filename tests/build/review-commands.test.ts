import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { makeScheme } from "../../src/build/make-scheme.ts";
import { readDecisions } from "../../src/scheme/decisions-file.ts";
import { runCli } from "../support/run-cli.ts";

let content: string;
let place: string;
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), "atlaswright-"));
  content = join(place, "scheme");
  makeScheme(content);
});
afterAll(() => rmSync(place, { recursive: true, force: true }));
const run = (...words: string[]) => runCli([...words, "--content", content, "--quiet"], { cwd: place });

describe("commands on the review", () => {
  it("check writes the worklist; its rulings come back by merge, and are asked about no more", () => {
    writeRecords("a1,Exemplum xxx,2011-07-12,SK1234,Ann\na2,Exemplum xxx,2011-07-12,SK1234,Ben");
    expect(run("check").stdout).toContain("2 questions that want a ruling");
    expect(readdirSync(join(content, "review")).filter((name) => /\.(csv|xlsx)$/.test(name))).toEqual([
      "accounting.csv",
      "content-findings.csv",
      "findings.csv",
      "standard-proposals.csv",
      "standard-tests.csv",
      "worklist.csv",
      "worklist.xlsx",
    ]);
    // Both records give a name and neither an id of it: 7c4b9498 is the test that scientificName is not empty.
    expect(readFileSync(join(content, "review/standard-tests.csv"), "utf8")).toMatch(
      /example,VALIDATION_SCIENTIFICNAME_NOTEMPTY,7c4b9498-[0-9a-f-]+,RUN_HAS_RESULT,COMPLIANT,2\n/,
    );
    const list = Papa.parse<Record<string, string>>(readFileSync(join(content, "review/worklist.csv"), "utf8"), {
      header: true,
      skipEmptyLines: true,
    }).data;
    expect(list.map(({ record }) => record)).toEqual(["example:a1", "example:a2"]);
    const ruled = list.map((row) => ({ ...row, ruling: "re-identify", value: "Exemplum primum" }));
    writeFileSync(join(place, "back.csv"), Papa.unparse(ruled));
    expect(run("merge", join(place, "back.csv")).stdout).toContain("2 rulings added to decisions.csv");
    expect(readDecisions(content).map(({ recordKey, ruling, saidName }) => [recordKey, ruling, saidName])).toEqual([
      ["example:a1", "re-identify", "Exemplum xxx"],
      ["example:a2", "re-identify", "Exemplum xxx"],
    ]);
    expect(run("check").stdout).toContain("0 questions");
    expect(run("merge", join(place, "back.csv")).stdout).toContain("2 already so");
  });

  it("letters, pack and feedback write into review/ and send nothing", () => {
    writeRecords("b1,Exemplum yyy,2011-07-12,SK1234,Ann\nb2,Exemplum primum,2011-07-12,SK1234,Ben");
    expect(run("letters").stdout).toContain("1 letter in");
    expect(readdirSync(join(content, "review/letters")).length).toBe(2);
    const pack = run("pack", "--recorder", "ANN").stdout.split("\n");
    expect(existsSync(pack[1] ?? "")).toBe(true);
    // Neither on the page nor in its title, its name or its table, which has no column for the file either.
    expect([pack[1], readFileSync(pack[1] ?? "", "utf8"), readFileSync(pack[2] ?? "", "utf8")].join()).not.toMatch(
      /Recorded by|\bann\b|example\.csv/i,
    );
    expect(run("pack", "--recorder", "ANN", "--names").stdout).toContain("by-ANN");
    expect(run("feedback", "--year", "2011").stdout).toContain("2 sheets in");
  });

  it("write nothing through a link that leads out of review/", () => {
    const outside = join(place, "outside.csv");
    writeFileSync(outside, "theirs");
    const findings = join(content, "review/findings.csv");
    rmSync(findings, { force: true });
    symlinkSync(outside, findings);
    for (const command of ["check", "letters", "pack"])
      expect(run(command), command).toMatchObject({ status: 2, stderr: expect.stringContaining("is a link") });
    expect(readFileSync(outside, "utf8")).toBe("theirs");
    rmSync(findings);
  });

  it("say what is wrong, and with which option", () => {
    expect(run("feedback", "--year", "last")).toMatchObject({
      status: 2,
      stderr: expect.stringContaining("--year is last"),
    });
    expect(run("pack", "--source", "x")).toMatchObject({ status: 2, stderr: expect.stringContaining("--source is x") });
    expect(run("pack", "--check", "never_asked").stderr).toContain("would be empty");
    expect(run("merge", "nowhere.csv").stderr).toContain("nowhere.csv is not there");
  });
});

function writeRecords(rows: string): void {
  mkdirSync(join(content, "records"), { recursive: true });
  writeFileSync(
    join(content, "records/example.csv"),
    `occurrenceID,scientificName,eventDate,gridReference,recordedBy\n${rows}\n`,
  );
}
