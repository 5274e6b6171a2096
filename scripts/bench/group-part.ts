import type { Database } from "../../src/engine/database.ts";
import { EVIDENCE_SETS } from "../../src/measures/change/evidence-sets.ts";
import { tellTrends } from "../../src/measures/change/tell-trends.ts";
import { measure } from "../../src/measures/measure-stage.ts";
import { countryOf, WHOLE_LAND } from "../truth/country.ts";
import { inventGroup } from "../truth/group.ts";
import { settle } from "../truth/homes.ts";
import { layInvented } from "../truth/judged.ts";
import { inventVisits } from "../truth/recording.ts";
import { recordVisits } from "../truth/records.ts";
import { scenarioOf } from "../truth/scenarios.ts";
import { schemeOf } from "../truth/scheme.ts";
import type { Outcome } from "./parts.ts";

/** Forty years in two periods. */
const PERIODS = [
  { id: "earlier", from: 1985, to: 2004 },
  { id: "recent", from: 2005, to: 2024 },
];
const SEED = 1;

/** All measures of an invented group over all the land; inventing it is not timed. */
export async function measureGroup(
  database: Database,
  { species, visits }: { species: number; visits: number },
): Promise<Outcome> {
  const scenario = scenarioOf("changing");
  const country = countryOf(SEED, WHOLE_LAND);
  const group = inventGroup(SEED, species);
  const homes = settle(country, group, scenario, SEED);
  // A recent visit for every earlier one, and as many again.
  const gone = inventVisits(country, scenario, Math.round(visits / 3), SEED, PERIODS);
  const records = recordVisits(country, group, homes, gone, SEED);
  const taxa = group.map(({ taxonId }) => taxonId);
  const scheme = schemeOf(taxa, PERIODS);
  await layInvented(database, country, records, taxa);
  const before = process.cpuUsage();
  const begun = performance.now();
  await measure(database, scheme, new Map(), []);
  const measured = performance.now();
  await tellTrends(database, scheme, EVIDENCE_SETS);
  const told = performance.now();
  const { user, system } = process.cpuUsage(before);
  const hectads = new Set(records.map(({ visit }) => country.tetrads[visit.square]?.hectad)).size;
  return {
    seconds: (told - begun) / 1000,
    counts: {
      ...{ species, hectads, visits: gone.length, records: records.length },
      ...{ trends_ms: told - measured, processor_ms: (user + system) / 1000 },
    },
  };
}
