import { accountFindings } from "./account-findings.ts";
import { characterFindings } from "./character-findings.ts";
import type { Content } from "./content.ts";
import type { ContentFinding } from "./finding.ts";
import { lookAlikeFindings } from "./look-alike-findings.ts";

export { type ContentFinding, findingInWords } from "./finding.ts";

/**
 * Everything in a scheme's own tables and texts that does not agree: characters with their contract, accounts with
 * characters, look-alikes with each other, pictures with what they need. Sorted by file, row and check.
 *
 * @param content a scheme, with what was found where its pictures were read
 * @example contentFindings(readScheme("content")) // []
 */
export function contentFindings(content: Content & { mediaFindings: readonly ContentFinding[] }): ContentFinding[] {
  const found = [
    ...characterFindings(content),
    ...accountFindings(content),
    ...lookAlikeFindings(content),
    ...content.mediaFindings,
  ];
  return found.sort(
    (one, other) =>
      compare(one.file, other.file) ||
      (one.row ?? 0) - (other.row ?? 0) ||
      compare(one.check, other.check) ||
      compare(one.value, other.value),
  );
}

function compare(one: string, other: string): number {
  return one < other ? -1 : Number(one > other);
}
