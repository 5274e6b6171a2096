import { beforeAll, describe, expect, it } from "vitest";
import { type Land, readLand, type Territory } from "../../scripts/demonstration/land.ts";
import { indexOfSpecies, SPECIES } from "../../scripts/demonstration/species.ts";
import { surroundingsOf } from "../../scripts/demonstration/surroundings.ts";
import { inventTruth, type Truth } from "../../scripts/demonstration/truth.ts";

const [BEFORE, EARLIER, RECENT] = [0, 1, 2];
let land: Land;
let changing: Truth;
let still: Truth;

beforeAll(() => {
  land = readLand();
  const places = surroundingsOf(land, 3);
  changing = inventTruth(places, 3, "changing");
  still = inventTruth(places, 3, "null");
});

/** How many 2 km squares hold a species in an epoch. */
function tetrads(truth: Truth, epithet: string, epoch: number, territory?: Territory): number {
  const species = indexOfSpecies(`invented-${epithet}`);
  return land.tetrads.filter(
    (one) => (!territory || one.territory === territory) && truth.isPresent(species, one.index, epoch),
  ).length;
}

describe("the changing truth", () => {
  it.each(["hypnorum", "rupestris", "vestalis", "lapidarius"])("lets %s spread", (epithet) => {
    expect(tetrads(changing, epithet, RECENT)).toBeGreaterThan(1.08 * tetrads(changing, epithet, EARLIER));
  });

  it.each(["ruderarius", "muscorum", "sylvarum", "distinguendus", "monticola"])("lets %s fall", (epithet) => {
    expect(tetrads(changing, epithet, RECENT)).toBeLessThan(0.8 * tetrads(changing, epithet, EARLIER));
  });

  it.each(["lucorum-agg", "hortorum", "pratorum", "sylvestris"])("holds no change of %s", (epithet) => {
    expect(Math.abs(tetrads(changing, epithet, RECENT) / tetrads(changing, epithet, EARLIER) - 1)).toBeLessThan(0.01);
  });

  it("keeps two species out of Ireland and lets two arrive there", () => {
    expect(["ruderatus", "humilis"].map((epithet) => tetrads(changing, epithet, BEFORE, "ireland"))).toEqual([0, 0]);
    for (const epithet of ["hypnorum", "vestalis"]) {
      expect(tetrads(changing, epithet, EARLIER, "ireland")).toBe(0);
      expect(tetrads(changing, epithet, RECENT, "ireland")).toBeGreaterThan(0);
    }
  });

  it("has the tree bumblebee nowhere before 2001 and somewhere in 2001", () => {
    const species = indexOfSpecies("invented-hypnorum");
    const in_ = (year: number): boolean => land.tetrads.some(({ index }) => changing.quality(species, index, year) > 0);
    expect([in_(1995), in_(2000), in_(2001)]).toEqual([false, false, true]);
  });
});

describe("the null truth", () => {
  it("has every species in the same squares in all epochs", () => {
    const moved = SPECIES.flatMap((_, species) =>
      land.tetrads.filter(({ index }) =>
        [BEFORE, RECENT].some(
          (epoch) => still.isPresent(species, index, epoch) !== still.isPresent(species, index, EARLIER),
        ),
      ),
    );
    expect(moved).toEqual([]);
    expect(tetrads(still, "hypnorum", EARLIER)).toBeGreaterThan(30_000);
  });
});
