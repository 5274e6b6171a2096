import type { Random } from "./random.ts";
import { mainCaste, type Sighting } from "./sightings.ts";
import { SPECIES } from "./species.ts";

/** Names of the groups that many workers are recorded under, and how often, by species and caste. */
const GROUPS: Readonly<Record<string, { name: string; worker: number; other: number }>> = {
  terrestris: { name: "Bombus terrestris/lucorum", worker: 0.62, other: 0.03 },
  "lucorum-agg": { name: "Bombus terrestris/lucorum", worker: 0.62, other: 0.05 },
  hortorum: { name: "Bombus hortorum/ruderatus", worker: 0.07, other: 0.02 },
  ruderatus: { name: "Bombus hortorum/ruderatus", worker: 0.6, other: 0.3 },
  muscorum: { name: "Bombus muscorum/humilis", worker: 0.3, other: 0.1 },
  humilis: { name: "Bombus muscorum/humilis", worker: 0.3, other: 0.1 },
  lapidarius: { name: "Bombus lapidarius/ruderarius", worker: 0.03, other: 0 },
  ruderarius: { name: "Bombus lapidarius/ruderarius", worker: 0.25, other: 0.04 },
};

/** Names of older books. */
const OLD_NAMES: Readonly<Record<string, string>> = {
  pascuorum: "Bombus agrorum",
  ruderarius: "Bombus derhamellus",
  monticola: "Bombus lapponicus",
  vestalis: "Psithyrus vestalis",
  bohemicus: "Psithyrus bohemicus",
  rupestris: "Psithyrus rupestris",
  barbutellus: "Psithyrus barbutellus",
  campestris: "Psithyrus campestris",
  sylvestris: "Psithyrus sylvestris",
};

/** Authorships, for the few rows that carry one. */
const AUTHORS: Readonly<Record<string, string>> = {
  terrestris: "(Linnaeus, 1758)",
  pascuorum: "(Scopoli, 1763)",
  lapidarius: "(Linnaeus, 1758)",
  hortorum: "(Linnaeus, 1761)",
  pratorum: "(Linnaeus, 1761)",
};

/**
 * The name under which a recorder writes a sighting: often a group's name for workers, sometimes an old name,
 * an authorship or other spacing and case. Never a wrong species: that is an error, see `errors.ts`.
 *
 * @param oldNames share of rows, 0 to 1, that use the older name where there is one
 * @example writtenName(sightingOfPascuorum, 1, random) // "Bombus agrorum"
 */
export function writtenName({ species, counts }: Sighting, oldNames: number, random: Random): string {
  const epithet = epithetOf(species);
  const group = GROUPS[epithet];
  const isGroup = group && random.chance(mainCaste(counts) === "worker" ? group.worker : group.other);
  const name = isGroup ? group.name : plainName(epithet, oldNames, random);
  const way = random.next();
  if (way < 0.012 && AUTHORS[epithet] && !isGroup) {
    return `Bombus ${epithet} ${AUTHORS[epithet]}`;
  }
  return way < 0.018 ? `${name} ` : way < 0.024 ? name.toLowerCase() : way < 0.028 ? name.replace(" ", "  ") : name;
}

/** The last part of a species' id. @example epithetOf(0) // "terrestris" */
export function epithetOf(species: number): string {
  return (SPECIES[species] as { taxonId: string }).taxonId.slice("invented-".length);
}

function plainName(epithet: string, oldNames: number, random: Random): string {
  if (epithet === "lucorum-agg") {
    return random.pick([
      "Bombus lucorum",
      "Bombus lucorum",
      "Bombus lucorum agg.",
      "Bombus lucorum agg.",
      "Bombus lucorum sensu lato",
    ]);
  }
  const old = OLD_NAMES[epithet];
  return old && random.chance(oldNames) ? old : `Bombus ${epithet}`;
}
