/** `suppressed.csv`: people and parties who are named nowhere. */
import { z } from "zod";
import { contentPath } from "./content-path.ts";
import { readContent } from "./read-content.ts";
import { parseTable } from "./table-file.ts";

/** Name of the file in the scheme's folder; it holds personal data and is never published. */
export const SUPPRESSED_FILE = "suppressed.csv";

/** One row of `suppressed.csv`. */
export const SuppressedRow = z.object({
  name: z
    .string()
    .min(1, "give a name")
    .describe("a person or party, in any spelling, or one word of the names of many"),
});

/** Names that nobody is to be shown. */
export interface SuppressedNames {
  /** Their keys: what depends on them is made anew when these change. */
  readonly keys: readonly string[];
  /**
   * Whether a name as a record writes it, of one person or of several, holds a suppressed one. Case, accents,
   * punctuation and the order of the words do not matter; where it is doubtful the answer is yes.
   */
  isSuppressed(name: string): boolean;
}

/**
 * Reads `suppressed.csv`; nobody is suppressed where the scheme has no such file.
 *
 * @throws {Mistake} on a row without a name
 */
export function readSuppressedNames(folder: string): SuppressedNames {
  if (contentPath(folder, SUPPRESSED_FILE) === undefined) return suppressedNames([]);
  const rows = parseTable(readContent(folder, SUPPRESSED_FILE), SUPPRESSED_FILE, SuppressedRow);
  return suppressedNames(rows.map(({ name }) => name));
}

/**
 * Makes the test of suppressed names. A name is suppressed when it holds every word of one of them.
 *
 * @example suppressedNames(["Zoë Quill"]).isSuppressed("QUILL, Zoe & A. Reed") // => true
 */
export function suppressedNames(names: readonly string[]): SuppressedNames {
  const suppressed = names.map((name) => recorderKey(name).split(" ")).filter(([first]) => first !== "");
  return {
    keys: suppressed.map((words) => words.join(" ")),
    isSuppressed(name) {
      const words = new Set(recorderKey(name).split(" "));
      return suppressed.some((all) => all.every((word) => words.has(word)));
    },
  };
}

/**
 * A recorder's name without case, accents and punctuation, as records are told apart by it.
 *
 * @example recorderKey("O’Brien,  Zoë (Ms)") // => "o brien zoe ms"
 */
export function recorderKey(name: string): string {
  return name
    .toLowerCase()
    .normalize("NFD")
    .replaceAll(/\p{M}+/gu, "")
    .normalize("NFC")
    .replaceAll(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}
