import { atlas, publishedFolder, taxon } from "../../published.ts";

/** What a field card says of a taxon. */
export interface CardFacts {
  readonly castes: readonly string[];
  /** What a record needs, in words. */
  readonly needs: string;
}

let kept: { folder: string; facts: Map<string, CardFacts> } | undefined;

/**
 * Castes and evidence of every taxon, by slug. Thousands of cards ask for them, so each taxon's file is read once a build.
 *
 * @example cardFacts().get("red-tailed")?.castes // ["queen", "worker", "male"]
 */
export function cardFacts(): ReadonlyMap<string, CardFacts> {
  const folder = publishedFolder();
  if (kept?.folder !== folder) {
    const facts = new Map(
      atlas().taxa.map(({ slug }) => {
        const { castes, evidence_needed: needs } = taxon(slug);
        return [slug, { castes, needs }] as const;
      }),
    );
    kept = { folder, facts };
  }
  return kept.facts;
}
