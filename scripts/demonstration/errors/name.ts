import { epithetOf } from "../names-as-written.ts";
import type { Random } from "../random.ts";
import type { Row } from "../source.ts";
import { SPECIES } from "../species.ts";
import { type Correction, columnOf, type ErrorKind, hasColumn, put } from "./error-kind.ts";

const NAMES = ["scientificName", "Species"] as const;
const CASTES = ["caste", "Sex/stage"] as const;
const hasName = hasColumn(...NAMES);

/** What each species is taken for. */
const LOOK_ALIKES: Readonly<Record<string, readonly string[]>> = {
  terrestris: ["vestalis", "lucorum"],
  "lucorum-agg": ["terrestris", "soroeensis", "bohemicus"],
  hortorum: ["ruderatus", "jonellus", "barbutellus"],
  ruderatus: ["hortorum"],
  pratorum: ["monticola", "lapidarius"],
  jonellus: ["hortorum"],
  monticola: ["pratorum", "lapidarius"],
  hypnorum: ["pascuorum"],
  lapidarius: ["ruderarius", "rupestris", "pratorum"],
  ruderarius: ["lapidarius", "rupestris"],
  pascuorum: ["muscorum", "humilis", "hypnorum"],
  muscorum: ["pascuorum", "humilis"],
  humilis: ["pascuorum", "muscorum"],
  sylvarum: ["distinguendus", "humilis"],
  distinguendus: ["sylvarum", "muscorum"],
  vestalis: ["bohemicus", "terrestris"],
  bohemicus: ["vestalis", "sylvestris"],
  rupestris: ["lapidarius", "ruderarius"],
  soroeensis: ["lucorum"],
  barbutellus: ["hortorum"],
  campestris: ["sylvestris"],
  sylvestris: ["bohemicus"],
};

/** Errors in what. */
export const nameErrors: readonly ErrorKind[] = [
  { kind: "misspelt-name", cards: 5, fits: hasName, spoil: misspell },
  { kind: "look-alike", cards: 9, fits: hasName, spoil: mistake },
  { kind: "impossible-caste", cards: 2, fits: hasColumn(...CASTES), spoil: cuckooWorker },
];

/** Drops, doubles or exchanges a letter inside the last word. */
function misspell(row: Row, random: Random): Correction | undefined {
  const column = columnOf(row, ...NAMES);
  const name = (row.cells[column] as string).trim();
  if (!/^Bombus [a-z]{7,}$/.test(name)) {
    return undefined;
  }
  const at = random.whole("Bombus ".length + 1, name.length - 3);
  const [before, letter, next, after] = [name.slice(0, at), name.charAt(at), name.charAt(at + 1), name.slice(at + 2)];
  return put(
    row,
    column,
    random.pick([before + next + after, before + letter + letter + next + after, before + next + letter + after]),
  );
}

function mistake(row: Row, random: Random): Correction | undefined {
  const epithet = epithetOf(row.sighting.species);
  const column = columnOf(row, ...NAMES);
  if (row.cells[column]?.includes("/")) {
    return undefined;
  }
  const wrong = put(row, column, `Bombus ${random.pick(LOOK_ALIKES[epithet] as readonly string[])}`);
  return wrong && { column, right: `Bombus ${epithet === "lucorum-agg" ? "lucorum agg." : epithet}` };
}

function cuckooWorker(row: Row, random: Random): Correction | undefined {
  const isCuckoo = SPECIES[row.sighting.species]?.flights.female !== undefined;
  const column = columnOf(row, ...CASTES);
  return isCuckoo ? put(row, column, column === "caste" ? "worker" : random.pick(["w", "2w"])) : undefined;
}
