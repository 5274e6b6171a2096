/** A cycle, an unknown parent or a taxon within itself, in words. */
export interface GraphProblem {
  readonly code: "unknown_parent" | "cycle";
  readonly taxonIds: readonly string[];
  readonly found: string;
  readonly wayOut: string;
}

/** Which taxa lie within which: a graph without cycles, where a taxon can lie within several others. */
export interface TaxonGraph {
  /** Every taxon above, nearest first, each once; empty for an unknown id. */
  ancestors(taxonId: string): readonly string[];
  /** Every taxon below, nearest first, each once; empty for an unknown id. */
  descendants(taxonId: string): readonly string[];
  readonly problems: readonly GraphProblem[];
}

/**
 * Builds the graph from each taxon's list of taxa directly above it. Unknown parents are left out and named; so is a
 * cycle, where every taxon of the cycle would be both above and below the others. Answers never hold the taxon itself.
 *
 * @example buildTaxonGraph(new Map([["lucorum", ["lucorum-agg"]], ["lucorum-agg", []]])).descendants("lucorum-agg") // ["lucorum"]
 */
export function buildTaxonGraph(within: ReadonlyMap<string, readonly string[]>): TaxonGraph {
  const problems: GraphProblem[] = [];
  const parents = new Map<string, string[]>();
  const children = new Map<string, string[]>([...within.keys()].map((id) => [id, []]));
  for (const [id, above] of within) {
    parents.set(
      id,
      [...new Set(above)].filter((parent) => within.has(parent)),
    );
    for (const parent of new Set(above)) {
      if (within.has(parent)) children.get(parent)?.push(id);
      else problems.push(unknownParent(id, parent));
    }
  }
  problems.push(...findCycles(parents));
  return {
    problems,
    ancestors: reachFrom(parents),
    descendants: reachFrom(children),
  };
}

/** Breadth first from a taxon, remembered from one question to the next. */
function reachFrom(edges: ReadonlyMap<string, readonly string[]>): (taxonId: string) => readonly string[] {
  const known = new Map<string, readonly string[]>();
  return (taxonId) => {
    const before = known.get(taxonId);
    if (before !== undefined) return before;
    const reached = new Set<string>();
    let front = edges.get(taxonId) ?? [];
    while (front.length > 0) {
      const next: string[] = [];
      for (const id of front) {
        if (id === taxonId || reached.has(id)) continue;
        reached.add(id);
        next.push(...(edges.get(id) ?? []));
      }
      front = next;
    }
    const answer = [...reached];
    known.set(taxonId, answer);
    return answer;
  };
}

/** Each cycle once, found by walking upwards and meeting a taxon of the present walk again. */
function findCycles(parents: ReadonlyMap<string, readonly string[]>): GraphProblem[] {
  const problems: GraphProblem[] = [];
  const done = new Set<string>();
  const walk: string[] = [];
  const visit = (id: string): void => {
    const met = walk.indexOf(id);
    if (met >= 0) {
      problems.push(cycleProblem(walk.slice(met)));
      return;
    }
    if (done.has(id)) return;
    walk.push(id);
    for (const parent of parents.get(id) ?? []) visit(parent);
    walk.pop();
    done.add(id);
  };
  for (const id of parents.keys()) visit(id);
  return problems;
}

function cycleProblem(cycle: readonly string[]): GraphProblem {
  return {
    code: "cycle",
    taxonIds: cycle,
    found: `taxa lie within each other in a circle: ${[...cycle, cycle[0]].join(" → ")}`,
    wayOut: "take one of these out of the other's list of taxa above",
  };
}

function unknownParent(id: string, parent: string): GraphProblem {
  return {
    code: "unknown_parent",
    taxonIds: [id],
    found: `${id} lies within "${parent}", which is not in the checklist`,
    wayOut: "add that taxon, or correct the id",
  };
}
