/** Letters that stand for two, or that no decomposition takes apart. */
const LETTERS: Readonly<Record<string, string>> = { œ: "oe", æ: "ae", ß: "ss", ø: "o", ł: "l", đ: "d", ı: "i" };

/**
 * A text as names are compared: small letters without accents, words parted by one space, without other signs.
 *
 * @param text in any script; what is no letter, figure or sign parting words is left out
 * @returns empty where nothing is left
 * @example folded("Bourdon de l’Œillet") // "bourdon de loeillet"
 * @example folded("Buff-tailed (White-tailed)") // "buff tailed white tailed"
 */
export function folded(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[œæßøłđı]/g, (letter) => LETTERS[letter] ?? letter)
    .replace(/['’ʼ`]/g, "")
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}
