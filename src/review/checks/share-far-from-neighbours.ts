import { sqlBeside } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { addFindings, type Check, type CheckContext } from "../check.ts";
import { dropTables } from "../drop-tables.ts";
import { layNeighbours } from "../neighbouring-squares.ts";
import { sharesApart } from "../shares-apart.ts";
import { type SetOfRecords, setShares } from "./set-shares.ts";

/**
 * Whether somebody's share of a scarce taxon is far above that of others who recorded around the same places in the same
 * years. One question about the set, which one ruling settles: a good eye or a search for it explains it as well as a slip
 * does. Sets are compared as in a funnel plot, with their ordinary differences allowed for (`sharesApart`); it says nothing
 * of sets with fewer than `minimum_records` of the taxon, or where others made fewer than `minimum_others` records. The
 * ordinary differences are taken from the sets that are tried, which hold many of the taxon: that makes it ask less.
 */
export const shareFarFromNeighbours: Check = {
  name: "share_far_from_neighbours",
  severity: "ask",
  asks: "Does a recorder or a source report a scarce taxon far oftener than others around in the same years? One question for all of its records of that taxon.",
  find,
};

async function find(context: CheckContext): Promise<void> {
  const { database, scheme } = context;
  const rules = scheme.settings.checks.shares;
  await layNeighbours(database, scheme, rules.within_km);
  await fillSources(context);
  const values: Record<string, number> = { ...rules, years: scheme.settings.checks.unexpected.years };
  await database.run(
    sqlBeside(import.meta.url, "set-shares.sql").replaceAll(/\{(\w+)\}/g, (whole, name: string) =>
      String(values[name] ?? whole),
    ),
  );
  const sets = await setShares(database, rules);
  const apart = sharesApart(
    sets.map(({ records, of_taxon, expected }) => ({ records, ofTaxon: of_taxon, expected })),
    { times: rules.times, falseShare: rules.false_share },
  );
  await fillApart(
    context,
    sets.filter((_, index) => apart[index] === true),
  );
  await addFindings(
    database,
    shareFarFromNeighbours,
    `SELECT s.record_no, 'scientificName' AS field, a.name AS value, a.subject, a.message, a.way_out, '' AS proposal
     FROM sets_apart AS a
     JOIN share_records AS s ON s.taxon_id = a.taxon_id AND CASE a.kind WHEN 'recorder' THEN s.recorder ELSE s.source END = a.who
     ORDER BY s.record_no, a.subject`,
  );
  await dropTables(database, [
    ...["share_records", "tried_sets", "set_counts", "all_counts", "sets_apart"],
    ...["single_taxon_sources", "compared_sources", "review_squares", "neighbouring_squares"],
  ]);
}

async function fillSources({ database, scheme }: CheckContext): Promise<void> {
  const { sources } = scheme.settings;
  const tables = {
    single_taxon_sources: sources.filter(({ aim }) => aim === "target species"),
    compared_sources: sources.filter(({ kind }) => kind !== "specimen" && kind !== "literature"),
  };
  for (const [table, some] of Object.entries(tables)) {
    const filler = await database.fill(table, { source: "text" });
    filler.add({ source: some.map(({ id }) => id) });
    filler.done();
  }
}

async function fillApart({ database, scheme }: CheckContext, sets: readonly SetOfRecords[]): Promise<void> {
  const names = new Map(scheme.taxa.map(({ taxonID, scientificName }) => [taxonID, scientificName]));
  const nameOf = ({ taxon_id }: SetOfRecords) => names.get(taxon_id) ?? taxon_id;
  const filler = await database.fill("sets_apart", {
    kind: "text",
    who: "text",
    taxon_id: "text",
    name: "text",
    subject: "text",
    message: "text",
    way_out: "text",
  });
  filler.add({
    kind: sets.map(({ kind }) => kind),
    who: sets.map(({ who }) => who),
    taxon_id: sets.map(({ taxon_id }) => taxon_id),
    name: sets.map(nameOf),
    subject: sets.map((set) => `${set.kind} ${set.who}: ${nameOf(set)}`),
    message: sets.map((set) => inWords(set, nameOf(set), scheme)),
    way_out: sets.map(
      () => "one answer settles all of them: whether it was looked for, and how it was told from its look-alikes",
    ),
  });
  filler.done();
}

/** "41 of 60 records by this recorder are Bombus humilis; of others' records within 30 km in the same years 1 in 700". */
function inWords({ kind, records, of_taxon, expected }: SetOfRecords, name: string, { settings }: Scheme): string {
  const count = (value: number) => value.toLocaleString("en-GB");
  const others = expected === 0 ? "none" : `1 in ${count(Math.round(1 / expected))}`;
  return `${count(of_taxon)} of ${count(records)} records ${kind === "recorder" ? "by this recorder" : "of this source"} are ${name}; of others’ records within ${settings.checks.shares.within_km} km in the same years ${others}`;
}
