import { describe, expect, it } from "vitest";
import { aboutOn } from "../../scripts/demonstration/flight.ts";
import { indexOfSpecies, SPECIES, type Species } from "../../scripts/demonstration/species.ts";
import type { Surroundings } from "../../scripts/demonstration/surroundings.ts";

const south: Surroundings = {
  territory: "britain",
  x: 450,
  y: 120,
  warmth: 0.95,
  height: 0.02,
  coast: 0,
  flowers: 0.5,
  heath: 0.2,
  cover: 0.7,
};
const north: Surroundings = { ...south, x: 300, y: 950, warmth: 0.2 };
const species = (epithet: string): Species => SPECIES[indexOfSpecies(`invented-${epithet}`)] as Species;
const on = (place: Surroundings, dayOfYear: number, year = 2000): Parameters<typeof aboutOn>[2] => ({
  place,
  dayOfYear,
  year,
  kind: "changing",
});

/** The day with most of a caste about. */
function best(epithet: string, caste: "queen" | "worker" | "male", place: Surroundings, year = 2000): number {
  const days = Array.from({ length: 300 }, (_, i) => i + 40);
  const about = days.map((day) => aboutOn(species(epithet), caste, on(place, day, year)));
  return days[about.indexOf(Math.max(...about))] as number;
}

describe("aboutOn", () => {
  it("brings queens before workers before males in every social species", () => {
    for (const { taxonId, flights } of SPECIES.filter(({ flights }) => flights.queen)) {
      const epithet = taxonId.slice("invented-".length);
      expect(best(epithet, "queen", south), taxonId).toBeLessThan(best(epithet, "worker", south));
      expect(flights.worker?.[0] ?? 0, taxonId).toBeLessThanOrEqual(flights.male?.[0] ?? 0);
    }
  });

  it("is later in the north, and earlier since 2006 in a changing truth", () => {
    expect(best("pratorum", "queen", north)).toBeGreaterThan(best("pratorum", "queen", south) + 10);
    expect(best("pratorum", "queen", south, 2015)).toBe(best("pratorum", "queen", south, 2005) - 5);
  });

  it("has buff-tailed workers at New Year in the south, none in the north, and no other workers", () => {
    expect(aboutOn(species("terrestris"), "worker", on(south, 5))).toBeGreaterThan(0.1);
    expect(aboutOn(species("terrestris"), "worker", on(north, 5))).toBe(0);
    const others = SPECIES.filter(({ taxonId }) => taxonId !== "invented-terrestris");
    expect(others.filter((one) => aboutOn(one, "worker", on(south, 5)) > 0)).toEqual([]);
  });

  it("gives a cuckoo no workers on any day", () => {
    expect([100, 150, 200, 250].map((day) => aboutOn(species("vestalis"), "worker", on(south, day)))).toEqual([
      0, 0, 0, 0,
    ]);
  });
});
