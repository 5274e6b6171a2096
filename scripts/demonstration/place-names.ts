import type { Random } from "./random.ts";

const FIRST = [
  "Betony",
  "Bramble",
  "Bugloss",
  "Burdock",
  "Campion",
  "Charlock",
  "Clary",
  "Comfrey",
  "Cowslip",
  "Dittany",
  "Fennel",
  "Figwort",
  "Fleabane",
  "Foxglove",
  "Gorse",
  "Hawkbit",
  "Hogweed",
  "Knapweed",
  "Ling",
  "Lovage",
  "Mallow",
  "Melilot",
  "Mullein",
  "Ragwort",
  "Restharrow",
  "Sainfoin",
  "Scabious",
  "Sorrel",
  "Speedwell",
  "Tansy",
  "Teasel",
  "Toadflax",
  "Trefoil",
  "Vetch",
  "Woad",
  "Woundwort",
  "Yarrow",
];
const TOWN_ENDS = [
  "combe",
  "holt",
  "garth",
  "mere",
  "stead",
  "strath",
  "thwaite",
  "wick",
  "haven",
  "cross",
  "ness",
  "ford",
];
const SITE_ENDS = [
  "Marsh",
  "Down",
  "Common",
  "Meadows",
  "Quarry",
  "Moss",
  "Dunes",
  "Levels",
  "Bank",
  "Wood",
  "Machair",
  "Cutting",
];
/** Letters beyond ASCII, as old files hold them. */
const SITE_STARTS = ["", "", "", "", "Upper ", "Lower ", "Old ", "Château ", "Clochán "];

/**
 * A name for an invented town; the end says that it is invented.
 *
 * @param used names given before; the new one is added
 * @example townName(random, new Set()) // "Tansycombe"
 */
export function townName(random: Random, used: Set<string>): string {
  return unused(used, () => random.pick(FIRST) + random.pick(TOWN_ENDS));
}

/** A name for an invented nature reserve. @example siteName(random, new Set()) // "Upper Woad Marsh" */
export function siteName(random: Random, used: Set<string>): string {
  return unused(used, () => `${random.pick(SITE_STARTS)}${random.pick(FIRST)} ${random.pick(SITE_ENDS)}`);
}

function unused(used: Set<string>, make: () => string): string {
  for (;;) {
    const name = make();
    if (!used.has(name)) {
      used.add(name);
      return name;
    }
  }
}
