import { describe, expect, it } from "vitest";
import { transform } from "../../../src/geodesy/transform.ts";
import { gridNamed } from "../../../src/grids/index.ts";
import { buildAtlasMap } from "../../../src/site/maps/atlas-map.ts";
import { keyGroups, mapDescription, mapTitle } from "../../../src/site/maps/map-words.ts";
import { countByClass, taxonClasses, VISIT_CLASSES } from "../../../src/site/maps/number-map.ts";
import { laterRunsSvg, speciesMapSvg } from "../../../src/site/maps/species-map.ts";
import { bookClass, sortSquares } from "../../../src/site/maps/taxon-squares.ts";
import { thumbnailSvg } from "../../../src/site/maps/thumbnail.ts";
import { britainAndIreland, landOverview } from "../../support/map-fixture.ts";
import { readPath } from "../../support/path-reader.ts";

const { atlas, hectads, taxon } = britainAndIreland();
const grids = (["british", "irish", "channel-islands"] as const).map((id) => gridNamed(id));
const map = buildAtlasMap({ atlas, hectads, transform, grids, land: landOverview() });
const sorted = sortSquares(map, atlas, taxon, 10_000);
const CLASSES = ["both", "new", "gone", "since", "before", "other"] as const;
const total = (numbers: readonly number[]) => numbers.reduce((sum, number) => sum + number, 0);

describe("classes of squares", () => {
  it("add up, with the squares without a record, to the hectads of the atlas", () => {
    const { counts } = sorted;
    expect(
      total(CLASSES.map((kind) => counts[kind])) + counts.coveredBoth + counts.coveredOne + counts.coveredNeither,
    ).toBe(hectads.length);
    expect(total(CLASSES.map((kind) => counts[kind]))).toBe(taxon.squares["10000"].length);
    expect(total([...sorted.byTerritory.values()].flatMap((row) => CLASSES.map((kind) => row[kind])))).toBe(
      taxon.squares["10000"].length,
    );
  });

  it("are all drawn, each square once", () => {
    expect(sorted.unplaced).toEqual([]);
    const drawn = [...sorted.cells.values()].flatMap((byClass) => CLASSES.flatMap((kind) => byClass[kind]));
    expect(drawn.length).toBe(taxon.squares["10000"].length);
  });

  it("appear in the key with the same numbers, in three groups", () => {
    const groups = keyGroups(sorted, atlas);
    expect(groups.map(({ heading }) => heading)).toEqual([
      "Covered in both periods: change can be judged",
      "Recorded, but cannot be compared",
      "No record of this species",
    ]);
    expect(total(groups.flatMap(({ lines }) => lines.map(({ squares }) => squares)))).toBe(hectads.length);
  });

  it("hatch the spine of a square recorded since only where it was not covered before", () => {
    const one = {
      square: "NZ27",
      state: "not_comparable_since",
      covered: [true, false],
      records: [0, 3],
      visits: [0, 1],
      first_year: 2010,
      last_year: 2012,
    } as const;
    const open = sortSquares(
      map,
      atlas,
      {
        squares: {
          "10000": [{ ...one, covered: [...one.covered], records: [...one.records], visits: [...one.visits] }],
          "2000": [],
        },
        uncovered: { neither: [], later_only: [], earlier_only: [] },
        change: [],
      },
      10_000,
    );
    expect([...open.hatch.values()].flatMap(({ whole, spine, page }) => [...whole, ...spine, ...page])).toEqual([]);
  });
});

describe("a species map", () => {
  const svg = speciesMapSvg(map, sorted, "map");
  const cellsIn = (within: string) =>
    total(
      [...within.matchAll(/<path d="([^"]*)"/g)].flatMap(([, d = ""]) =>
        readPath(d).map(({ points: [from, to] }) => (to?.[0] ?? 0) - (from?.[0] ?? 0)),
      ),
    );
  const group = (id: string) => svg.match(new RegExp(`<g id="map-${id}">(.*?)</g></g>`))?.[1] ?? "";

  it("draws every square of a class as part of a run", () => {
    expect(cellsIn(group("both"))).toBe(sorted.counts.both);
    expect(cellsIn(group("since")) + cellsIn(group("since-covered"))).toBe(sorted.counts.since);
    expect(cellsIn(group("before")) + cellsIn(group("before-covered"))).toBe(sorted.counts.before);
  });

  it("hatches the uncovered part of recorded squares by the runs that draw their other part", () => {
    const hatch =
      svg.match(/<g class="map-hatch".*?(?=<g transform="scale|<use href="#atlas-land" class="map-coast")/)?.[0] ?? "";
    const hatched = (part: "whole" | "spine" | "page") =>
      total([...sorted.hatch.values()].map((parts) => parts[part].length));
    const again = (["since", "before"] as const).filter((id) => hatch.includes(`<use href="#map-${id}"/>`));
    expect(cellsIn(hatch) + total(again.map((id) => cellsIn(group(id))))).toBe(
      hatched("whole") + hatched("spine") + hatched("page"),
    );
  });

  it("lends a smaller map the runs of the later period", () => {
    const ids = [...laterRunsSvg(map, sorted, "map").matchAll(/#map-([a-z-]+)"/g)].map(([, id = ""]) => id);
    expect(total(ids.map((id) => cellsIn(group(id))))).toBe(sorted.counts.both + sorted.counts.since);
  });
});

describe("a map that compares nothing", () => {
  const single = { ...atlas, compared: null, periods: [{ id: "p1", label: "1990–2024", from: 1990, to: 2024 }] };
  const plain = sortSquares(
    map,
    single,
    {
      ...taxon,
      squares: {
        ...taxon.squares,
        "10000": taxon.squares["10000"].map((square) => ({
          ...square,
          state: "recorded" as const,
          records: [total(square.records)],
          covered: [true],
        })),
      },
    },
    10_000,
  );

  it("draws whole squares and hatch, no spine, no hue, no word of change", () => {
    const svg = speciesMapSvg(map, plain, "map");
    expect(svg.match(/(?:map|runs)-(new|gone|part)/g)).toBeNull();
    expect([...plain.hatch.values()].every(({ spine, page }) => spine.length === 0 && page.length === 0)).toBe(true);
    const words = [
      mapTitle("the bee", plain),
      mapDescription(plain, single),
      ...keyGroups(plain, single).flatMap(({ heading, lines }) => [
        heading,
        ...lines.flatMap((line) => [line.words, line.note]),
      ]),
    ].join(" ");
    expect(words).not.toMatch(/newly|refound|both|compar|change/i);
    expect(words).toContain("Invented records.");
  });
});

describe("2 km squares", () => {
  it("take the one-period form where change cannot be judged at 2 km", () => {
    const fine = sortSquares(map, atlas, taxon, 2_000);
    expect(fine.compared).toBe(false);
    expect(fine.counts.both).toBe(taxon.squares["2000"].length);
    expect(fine.unplaced).toEqual([]);
  });

  it("name the class of a square by its state", () => {
    const of = (state: Parameters<typeof bookClass>[0]["state"], compared: boolean) =>
      bookClass({ state, records: [0, 0] }, compared, { laterIndex: 1 });
    expect(
      ["retained", "gained", "lost", "not_comparable_since", "not_comparable_before", "recorded"].map((state) =>
        of(state as "retained", true),
      ),
    ).toEqual(["both", "new", "gone", "since", "before", "other"]);
    expect(of("gained", false)).toBe("both");
  });
});

describe("small maps and number maps", () => {
  it("draws in a thumbnail every square of the latest period, in runs", () => {
    const latest = taxon.squares["10000"].filter(({ records }) => (records[1] ?? 0) > 0).map(({ square }) => square);
    const runs = [...thumbnailSvg(map, { latest }).matchAll(/map-recorded" d="([^"]*)"/g)].flatMap(([, d]) =>
      readPath(d ?? ""),
    );
    expect(total(runs.map(({ points: [from, to] }) => Math.round((to?.[0] ?? 0) - (from?.[0] ?? 0))))).toBe(
      latest.length,
    );
    expect(runs.length).toBeLessThan(latest.length);
  });

  it("counts every square in one class", () => {
    const visits = hectads.map((hectad) => hectad.visits[1] ?? 0);
    expect(total(countByClass(visits, VISIT_CLASSES))).toBe(hectads.length);
    for (const largest of [0, 1, 3, 7, 18, 240]) {
      const classes = taxonClasses(largest);
      expect(
        total(
          countByClass(
            Array.from({ length: largest + 1 }, (_, i) => i),
            classes,
          ),
        ),
      ).toBe(largest + 1);
    }
  });
});

it("says what the map shows, with counts that add up", () => {
  const words = mapDescription(sorted, atlas);
  const { both, gone, since, before } = sorted.counts;
  expect(words).toContain(
    `${both} squares found in both periods, ${sorted.counts.new} newly found, ${gone} not refound, ${since + before} that cannot be compared.`,
  );
  expect(words.endsWith("Invented records.")).toBe(true);
  expect(mapTitle("the red-tailed bumblebee", sorted)).toBe(
    "Where the red-tailed bumblebee was recorded, 1990–2005 and 2006–2024, by 10 km square",
  );
});
