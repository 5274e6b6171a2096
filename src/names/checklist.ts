import { type MatchName, nameMatcher } from "./match-name.ts";
import { indexNames, type NameProblem } from "./name-index.ts";
import { buildTaxonGraph, type GraphProblem } from "./taxon-graph.ts";

/** One taxon of a scheme's checklist. Aggregates and genera are taxa too; `within` lists those directly above. */
export interface ChecklistTaxon {
  readonly taxonId: string;
  readonly scientificName: string;
  readonly authorship: string;
  /** "species", "aggregate", "genus", … as the checklist writes it. */
  readonly rank: string;
  /** Other scientific names that mean this taxon, with or without authorship. */
  readonly synonyms: readonly string[];
  /** Vernacular names by language code, one or several a language. */
  readonly vernacular: Readonly<Record<string, string | readonly string[]>>;
  /** Ids of the aggregates directly above: a graph, not a tree. */
  readonly within: readonly string[];
  /** Ids of the castes the taxon can have; empty when the checklist does not say. */
  readonly castes: readonly string[];
}

/** What is wrong with a checklist, for its author: a finding, not an exception. */
export type ChecklistProblem = GraphProblem | NameProblem | DuplicateId;

/** Two rows with one id; the first is kept. */
export interface DuplicateId {
  readonly code: "duplicate_id";
  readonly taxonIds: readonly string[];
  readonly found: string;
  readonly wayOut: string;
}

/** A checklist that is ready to be asked. Ids that are not in it have no ancestors and no descendants. */
export interface Checklist {
  readonly taxa: ReadonlyMap<string, ChecklistTaxon>;
  readonly problems: readonly ChecklistProblem[];
  readonly match: MatchName;
  /** Every taxon above, nearest first, each once. */
  ancestors(taxonId: string): readonly string[];
  /** Every taxon below, nearest first, each once. */
  descendants(taxonId: string): readonly string[];
  /** The taxon itself, then its ancestors, then its descendants. */
  lineage(taxonId: string): readonly string[];
  /** True when the taxon has taxa within it, or its rank says that it is an aggregate. */
  isAggregate(taxonId: string): boolean;
}

/**
 * Makes a checklist of its taxa. Nothing is thrown: repeated ids, unknown parents, cycles, and names of two taxa are
 * listed as problems. A name of two taxa matches neither until the checklist is put right.
 *
 * @example buildChecklist([pratorum]).match("B. pratorum") // { taxonId: "pratorum", matchedAs: "accepted", notes: [{ code: "genus_abbreviated", … }] }
 */
export function buildChecklist(rows: readonly ChecklistTaxon[]): Checklist {
  const taxa = new Map<string, ChecklistTaxon>();
  const duplicates: DuplicateId[] = [];
  for (const row of rows) {
    if (taxa.has(row.taxonId)) duplicates.push(duplicateId(row));
    else taxa.set(row.taxonId, row);
  }
  const graph = buildTaxonGraph(new Map([...taxa.values()].map((taxon) => [taxon.taxonId, taxon.within])));
  const names = indexNames(taxa.values());
  const isAggregate = (taxonId: string): boolean =>
    graph.descendants(taxonId).length > 0 || /aggregate|group|complex/i.test(taxa.get(taxonId)?.rank ?? "");
  return {
    taxa,
    problems: [...duplicates, ...graph.problems, ...names.problems],
    match: nameMatcher({ taxa, names, ancestors: graph.ancestors, descendants: graph.descendants, isAggregate }),
    ancestors: graph.ancestors,
    descendants: graph.descendants,
    lineage: (taxonId) => [taxonId, ...graph.ancestors(taxonId), ...graph.descendants(taxonId)],
    isAggregate,
  };
}

function duplicateId({ taxonId, scientificName }: ChecklistTaxon): DuplicateId {
  return {
    code: "duplicate_id",
    taxonIds: [taxonId],
    found: `id ${taxonId} stands a second time, for "${scientificName}"; the first row is kept`,
    wayOut: "give each taxon an id of its own",
  };
}
