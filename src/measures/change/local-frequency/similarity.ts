import { everRecorded, type Presence } from "../presence.ts";

/** The taxa of each square as bits, for counting those that two have in common. */
export interface TaxonBits {
  words: number;
  bits: Int32Array;
  lengths: Int32Array;
}

/**
 * Lays the taxa ever recorded in each square as bits.
 *
 * @example taxonBits(presence).lengths[0] // => 3
 */
export function taxonBits(presence: Presence): TaxonBits {
  const { taxa, squares } = presence;
  const ever = everRecorded(presence);
  const words = Math.ceil(taxa.length / 32);
  const bits = new Int32Array(words * squares.length);
  const lengths = new Int32Array(squares.length);
  for (let square = 0; square < squares.length; square++)
    for (let taxon = 0; taxon < taxa.length; taxon++) {
      if (ever[square * taxa.length + taxon] !== 1) continue;
      const word = square * words + (taxon >> 5);
      bits[word] = (bits[word] as number) | (1 << (taxon & 31));
      lengths[square] = (lengths[square] as number) + 1;
    }
  return { words, bits, lengths };
}

/**
 * Sørensen's coefficient of two squares: twice the taxa in common over the taxa of both; 0 where neither has any.
 *
 * @example similarity(taxonBits(presence), 0, 1) // => 0.5
 */
export function similarity({ words, bits, lengths }: TaxonBits, one: number, other: number): number {
  let common = 0;
  for (let word = 0; word < words; word++)
    common += bitCount((bits[one * words + word] as number) & (bits[other * words + word] as number));
  const both = (lengths[one] as number) + (lengths[other] as number);
  return both === 0 ? 0 : (2 * common) / both;
}

/** Bits set in a 32-bit word, summed in parallel over pairs, fours and bytes. */
function bitCount(word: number): number {
  const pairs = word - ((word >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}
