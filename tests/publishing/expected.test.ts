/** A stranger asks what is expected, and where a visit is wanted, to find out where hidden records are. */
import { appendFileSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { SquareFile, WantedFile } from "../../src/publishing/contracts.ts";
import { fingerprint, HIDDEN, type HiddenPlaces, LIST, writeHiddenScheme } from "../support/hidden-species.ts";
import { runScheme } from "../support/run-scheme.ts";

let folder: string;
let runs = 0;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "atlaswright-expected-leak-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Covered squares round SK12 and SK14, so that species are expected among them. */
const AROUND = ["SK01", "SK02", "SK03", "SK11", "SK13", "SK21", "SK22", "SK23"].map(
  (hectad, index) => `a${index},common,2014-06-01,${hectad},,,Bo,present,,,Exemplum commune`,
);

async function published(places: HiddenPlaces, list = LIST): Promise<string> {
  runs += 1;
  const own = join(folder, String(runs));
  writeHiddenScheme(join(own, "scheme"), places, list);
  appendFileSync(join(own, "scheme/records/walks.csv"), `${AROUND.join("\n")}\n`);
  return (await runScheme(join(own, "scheme"), own)).published;
}

const square = (out: string, slug: string) =>
  SquareFile.parse(JSON.parse(readFileSync(join(out, `squares/${slug}.json`), "utf8")));
const wanted = (out: string) => WantedFile.parse(JSON.parse(readFileSync(join(out, "wanted.json"), "utf8")));

describe("what is expected", () => {
  it("is told from what is shown: hidden records moved within it change no byte of an expectation, distance or rank", async () => {
    const out = await published(HIDDEN);
    const first = fingerprint(out);
    // It is told of the species shown at 10 km, by the square that is shown; the withheld one is expected nowhere.
    expect(square(out, "sk13").expected.map(({ slug }) => slug)).toContain("exemplum-secretum");
    const slugs = wanted(out).squares.flatMap(({ slug }) => square(out, slug).expected.map((one) => one.slug));
    expect(slugs.length).toBeGreaterThan(5);
    expect(slugs).not.toContain("exemplum-profundum");
    const moves: Partial<HiddenPlaces>[] = [
      { secret: ["SK1828", "SK1040", "SK1949"] },
      { deep: "SK1330", fine: "SK1121" },
    ];
    for (const places of moves) expect(fingerprint(await published({ ...HIDDEN, ...places }))).toEqual(first);
  }, 120_000);

  it("would give the withheld species away without the list", async () => {
    const table = async (list: string) =>
      readFileSync(join(await published({ ...HIDDEN, deep: "SK1330" }, list), "data/2021.1/expected_taxa.csv"), "utf8");
    expect(await table("")).toMatch(/^deep,british,SK2/m);
    expect(await table(LIST)).not.toMatch(/deep/);
  }, 60_000);
});
