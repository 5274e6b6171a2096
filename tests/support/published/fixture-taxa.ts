/**
 * Taxa for invented published tables: names, castes and the colours of a bee's body plan, front to back:
 * face, collar, mid thorax, rear thorax, T1 to T6, hind leg, wings.
 */
export interface FixtureTaxon {
  readonly slug: string;
  readonly vernacular: string;
  readonly short: string;
  readonly scientific: string;
  readonly castes: readonly string[];
  readonly female: string;
  readonly male: string;
  readonly seen: string;
  readonly aggregate: boolean;
}

const SOCIAL = ["queen", "worker", "male"] as const;
const CUCKOO = ["female", "male"] as const;

function species(
  slug: string,
  short: string,
  epithet: string,
  seen: string,
  female: string,
  male: string,
): FixtureTaxon {
  const castes = slug.includes("cuckoo") ? CUCKOO : SOCIAL;
  return {
    slug,
    vernacular: `${short} bumblebee`,
    short,
    scientific: `Bombus ${epithet}`,
    castes,
    female,
    male,
    seen,
    aggregate: false,
  };
}

/** Six taxa, one of them an aggregate without a body of its own. The patterns are simplified. */
export const FIXTURE_TAXA: readonly FixtureTaxon[] = [
  species(
    "red-tailed",
    "Red-tailed",
    "lapidarius",
    "red-tail",
    "black black black black black black black red red red black clear",
    "yellow yellow black black black black black red red red orange clear",
  ),
  species(
    "buff-tailed",
    "Buff-tailed",
    "terrestris",
    "white-tail",
    "black yellow black black black yellow black buff buff buff black clear",
    "black yellow black black black yellow black white white white black clear",
  ),
  {
    ...species("terrestris-group", "Buff/white-tailed group", "terrestris/lucorum", "white-tail", "", ""),
    vernacular: "Buff/white-tailed group",
    aggregate: true,
  },
  species(
    "common-carder",
    "Common carder",
    "pascuorum",
    "ginger",
    "ginger ginger ginger ginger buff varies:brown:black brown brown ginger ginger ginger clear",
    "ginger ginger ginger ginger buff brown brown brown ginger ginger ginger clear",
  ),
  species(
    "red-tailed-cuckoo",
    "Red-tailed cuckoo",
    "rupestris",
    "red-tail",
    "black black black black black black black red red red absent smoky",
    "black grey black grey grey black black red red red absent clear",
  ),
  species(
    "garden",
    "Garden",
    "hortorum",
    "white-tail",
    "black yellow black yellow yellow black black white white white black clear",
    "black yellow black yellow yellow black black white white white black clear",
  ),
];
