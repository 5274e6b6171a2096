/** A stranger tries to find out where hidden records are from everything a scheme publishes. */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { NeighbourhoodBlock, NeighbourhoodIndex } from "../../src/publishing/contracts.ts";
import { aroundSquare } from "../../src/site/components/narrow/around-square.ts";
import { helperOf } from "../../src/site/components/narrow/narrow.ts";
import { type Reason, reasonsFor } from "../../src/site/components/narrow/reasons.ts";
import { taxon } from "../site/components/narrow/invented-taxa.ts";
import {
  codesFound,
  fingerprint,
  HIDDEN,
  type HiddenPlaces,
  LIST,
  TELLTALE,
  toldAt2km,
  writeHiddenScheme,
} from "../support/hidden-species.ts";
import { runScheme } from "../support/run-scheme.ts";

let folder: string;
let runs = 0;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "atlaswright-leak-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** All reasons of place that the identification helper gives for any square, by taxon. */
function reasonsOf(published: string): Record<string, Reason[]> {
  const read = (name: string): unknown => JSON.parse(readFileSync(join(published, "identify/places", name), "utf8"));
  const index = NeighbourhoodIndex.parse(read("index.json"));
  const helper = helperOf([]);
  const reasons = (slug: string): Reason[] =>
    index.blocks.flatMap((name, i) => {
      const block = NeighbourhoodBlock.parse(read(`${name}.json`));
      return (index.squares[i] ?? "").split(" ").flatMap((square) => {
        const nearby = aroundSquare(index, block, square)?.nearby.get(slug);
        const candidate = { taxon: taxon(slug), chance: 1, caste: "", form: "" };
        return reasonsFor(helper, candidate, { answers: { states: new Map() }, visits: [], nearby });
      });
    });
  return Object.fromEntries(index.taxa.map((slug) => [slug, reasons(slug)]));
}

/** Publishes the scheme and gives the folder of what is published. */
async function publishedWith(places: HiddenPlaces | null, list = LIST): Promise<string> {
  runs += 1;
  const own = join(folder, String(runs));
  writeHiddenScheme(join(own, "scheme"), places, list);
  return (await runScheme(join(own, "scheme"), own)).published;
}

/** About a metre west of the line of 2 km squares at easting 412000, and near no corner or centre: a move, not a check. */
const NEAR_LINE = "52.7838370 -1.8235378 10";

/** Moves that leave every record in the square the list allows to be known, and what a clumsy copy would show of each. */
const MOVES: Readonly<Record<string, Partial<HiddenPlaces>>> = {
  "away from the visit it was part of": { secret: ["SK1828", "SK1444", "SK1444"] },
  "to a 2 km square nobody visited": { secret: ["SK1626", "SK1040", "SK1949"], nest: "SK1424" },
  "to a reference of the whole square": { secret: ["SK12", "SK14", "SK14"] },
  "to a point near the line of two 2 km squares": { secret: [NEAR_LINE, "SK1444", "SK1444"] },
  "to another part of the country, of the withheld one": { deep: "NY2020" },
  "over the sea, of the withheld one": { deep: "O1534" },
  "within 2 km, of the one shown at 2 km": { fine: "SK1121" },
};

describe("hidden records", () => {
  it("give the identification helper no more to say of their places than the list allows", async () => {
    const first = reasonsOf(await publishedWith(HIDDEN));
    expect(first["exemplum-profundum"]).toEqual([]);
    expect(first["exemplum-secretum"]).toContainEqual({ kind: "recorded-here", stand: "agrees", year: 2015 });
    expect(reasonsOf(await publishedWith(HIDDEN, ""))["exemplum-profundum"]).not.toEqual([]);
  }, 120_000);

  it("may be moved within what is shown of them, and not one published byte changes", async () => {
    const first = fingerprint(await publishedWith(HIDDEN));
    for (const [move, places] of Object.entries(MOVES))
      expect([move, fingerprint(await publishedWith({ ...HIDDEN, ...places }))]).toEqual([move, first]);
  }, 120_000);

  it("would give themselves away by every one of these moves without the list", async () => {
    const first = fingerprint(await publishedWith(HIDDEN, ""));
    for (const [move, places] of Object.entries(MOVES).filter(([one]) => /visit|line|country/.test(one)))
      expect([move, fingerprint(await publishedWith({ ...HIDDEN, ...places }, ""))]).not.toEqual([move, first]);
  }, 120_000);

  it("leave no code of a square that only they were in, in any byte of any file", async () => {
    expect(await codesFound(await publishedWith(HIDDEN), TELLTALE)).toEqual([]);
    const naked = await codesFound(await publishedWith(HIDDEN, ""), TELLTALE);
    for (const kind of [
      /\.csv:/,
      /\.parquet decoded:/,
      /squares\/sk14\.json:/,
      /map\/tetrads\.json:/,
      /\.geojson:/,
      /identify\/places\/british-4-1\.json:/,
      /identify\/places\/index\.json:/,
    ])
      expect(naked.some((one) => kind.test(one))).toBe(true);
  });

  it("change nothing that is said of 2 km squares when they come into a new edition", async () => {
    const coarse = LIST.replace("fine,2 km", "fine,10 km");
    const before = await toldAt2km(await publishedWith(null, coarse));
    expect(before.length).toBeGreaterThan(20);
    expect(await toldAt2km(await publishedWith(HIDDEN, coarse))).toEqual(before);
    expect(await toldAt2km(await publishedWith(HIDDEN, ""))).not.toEqual(before);
  });

  it("are counted where no place is told: in totals, years, seasons and the accounting", async () => {
    const published = await publishedWith(HIDDEN);
    const taxon = JSON.parse(readFileSync(join(published, "taxa/exemplum-profundum.json"), "utf8")) as {
      generalised_to: string;
      records: number;
      hectads: number;
      years: object[];
      not_on_map: object[];
    };
    expect(taxon).toMatchObject({
      generalised_to: "withheld",
      records: 1,
      hectads: 0,
      years: [{ year: 2015, records: 1, visits: 1 }],
      not_on_map: [
        { resolution_m: 2000, reason: "place withheld", records: 1 },
        { resolution_m: 10_000, reason: "place withheld", records: 1 },
      ],
    });
  });
});
