import type { CharacterRow } from "../scheme/content-tables.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { levelOf } from "./record-evidence.ts";

/** What settles an identification: the evidence, the body part it must show, and what to see there, in words. */
export interface SettlingEvidence {
  /** 1 sight, 2 photograph, 3 specimen. */
  level: number;
  /** As characters.csv names it; empty where the scheme's account says it in words only. */
  part: string;
  words: string;
}

type Sources = Pick<Scheme, "accounts" | "taxa"> & { characters: readonly CharacterRow[] };

/**
 * The easiest evidence that settles a taxon in a caste: characters that settle and that the caste has, those that less
 * evidence can show first. Without such a character it is what the taxon's account asks for, as a photograph.
 *
 * @param caste id of the settings; empty where the record states none, then only a character that all castes share can settle it
 * @returns undefined where the scheme says nothing
 * @example settlingEvidence(scheme, "invented-bohemicus", "male")?.words // "a specimen of the antenna: 3 equal to 5, not 3 shorter than 5 as in Bombus vestalis"
 */
export function settlingEvidence(scheme: Sources, taxonID: string, caste: string): SettlingEvidence | undefined {
  const [easiest] = scheme.characters
    .filter((row) => row.taxonID === taxonID && row.reliability === "settles" && fits(row.castes, caste))
    .sort((a, b) => levelOf(a.evidence) - levelOf(b.evidence));
  if (easiest !== undefined) {
    const { part, state, evidence } = easiest;
    const words = `a ${evidence === "sight" ? "clear view" : evidence} of ${partInWords(part)}: ${state}`;
    return { level: levelOf(evidence), part, words: `${words}${contrast(scheme, taxonID, caste, part, state)}` };
  }
  const evidence = scheme.accounts.get(taxonID)?.front.evidence ?? "";
  return evidence === "" ? undefined : { level: levelOf("photograph"), part: "", words: evidence };
}

/** A body part in a sentence. @example partInWords("hind-leg") // "the hind leg" @example partInWords("T2") // "T2" */
export function partInWords(part: string): string {
  return /^[A-Z]\d/.test(part) ? part : `the ${part.replaceAll("-", " ")}`;
}

function fits(castes: readonly string[], caste: string): boolean {
  return castes.length === 0 || castes.includes(caste);
}

/** What the same part shows in the first look-alike of the account in which it differs. */
function contrast(
  { characters, accounts, taxa }: Sources,
  taxonID: string,
  caste: string,
  part: string,
  state: string,
) {
  for (const { taxonID: other } of accounts.get(taxonID)?.front.look_alikes ?? []) {
    const there = characters.find((row) => row.taxonID === other && row.part === part && fits(row.castes, caste));
    if (there === undefined || there.state === state || there.state === "varies") continue;
    const name = taxa.find((taxon) => taxon.taxonID === other)?.scientificName ?? "";
    return `, not ${there.state} as in ${name}`;
  }
  return "";
}
