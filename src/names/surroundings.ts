import { cleanName } from "./name-text.ts";

/** One kind of surroundings, such as habitat, with the words for its terms. */
export interface SurroundingWords {
  readonly id: string;
  /** Words before a colon that bring a term of this kind into associatedTaxa. */
  readonly relations: readonly string[];
  readonly terms: readonly { readonly id: string; readonly words: readonly string[] }[];
}

/** What a cell says: ids of terms, each once in the cell's order, and the parts no term has a word for. */
export interface ReadSurroundings {
  readonly terms: readonly string[];
  readonly unread: readonly string[];
}

/**
 * Reads a cell that names habitats, flowers, nest sites or hosts. Several are parted by | or ;. Letter case, hyphens and
 * plural spaces make no difference; nothing is guessed from parts of words.
 *
 * @example readSurroundings("Red clover | nettles", { id: "flower", relations: [], terms: [{ id: "red-clover", words: ["red clover", "Trifolium pratense"] }] }) // { terms: ["red-clover"], unread: ["nettles"] }
 */
export function readSurroundings(cell: string, { terms }: Pick<SurroundingWords, "terms">): ReadSurroundings {
  const found = new Set<string>();
  const unread: string[] = [];
  for (const part of partsOf(cell)) {
    const term = terms.find(({ words }) => words.some((word) => wordKey(word) === wordKey(part)));
    if (term === undefined) unread.push(part);
    else found.add(term.id);
  }
  return { terms: [...found], unread };
}

/**
 * The parts of associatedTaxa that are of a kind, by the relation before their colon, joined as a cell of their own.
 * Source: Darwin Core term associatedTaxa, whose examples are written "relation: name", parted by " | ".
 *
 * @example associatedOfKind("visits flower of: Trifolium pratense | host: Bombus terrestris", { relations: ["visits flower of"] }) // "Trifolium pratense"
 */
export function associatedOfKind(cell: string, { relations }: Pick<SurroundingWords, "relations">): string {
  const keys = new Set(relations.map(wordKey));
  return partsOf(cell)
    .flatMap((part) => {
      const [, relation = "", name = ""] = part.match(/^([^:]+):(.*)$/s) ?? [];
      return keys.has(wordKey(relation)) ? [cleanName(name)] : [];
    })
    .join(" | ");
}

function partsOf(cell: string): string[] {
  return cell
    .split(/[|;]/)
    .map((part) => cleanName(part))
    .filter(Boolean);
}

function wordKey(text: string): string {
  return cleanName(text).toLowerCase().replaceAll("-", " ");
}
