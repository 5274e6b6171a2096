/** What a licence asks of those who publish what was made from the data. */
export type Condition =
  | "attribution"
  | "share alike"
  | "database share alike"
  | "no commercial use"
  | "no adaptations"
  | "permission";

/** Conditions of the licence elements of Creative Commons, as its licences define them. */
const ELEMENTS: Readonly<Record<string, Condition>> = {
  by: "attribution",
  sa: "share alike",
  nc: "no commercial use",
  nd: "no adaptations",
};

/**
 * Other licences by how people write them. The Open Government Licence asks for attribution alone, and says itself that it
 * goes with CC BY and ODC-By (The National Archives, version 3.0); the three of Open Data Commons by their own texts.
 */
const OTHERS: readonly [pattern: RegExp, conditions: readonly Condition[]][] = [
  [/\bpddl\b|public\s*domain|\bcc\s*(?:0|zero)\b/, []],
  [/\bogl\b|open\s+government\s+licen[cs]e/, ["attribution"]],
  [/\bodbl\b|open\s+database\s+licen[cs]e/, ["attribution", "database share alike"]],
  [/\bodc\s+by\b|open\s+data\s+commons\s+attribution/, ["attribution"]],
  [/all\s+rights\s+reserved|\bcopyright\b|©|no\s+licen[cs]e/, ["permission"]],
];

/**
 * The conditions of a licence as written: an address with or without /legalcode, an SPDX identifier, or words.
 *
 * @returns its conditions, none for the public domain; undefined where the text names no licence that is known here
 * @example conditionsOf("http://creativecommons.org/licenses/by-nc/4.0/legalcode") // => ["attribution", "no commercial use"]
 * @example conditionsOf("CC0-1.0") // => []
 */
export function conditionsOf(text: string): readonly Condition[] | undefined {
  const plain = text.trim().toLowerCase();
  const address = /creativecommons\.org\/(licen[cs]es|publicdomain)\/([a-z-]+)/.exec(plain);
  if (address !== null) return address[1] === "publicdomain" ? [] : ofElements(address[2] ?? "");
  const words = plain.replaceAll(/[\s_()/-]+/g, " ");
  const elements = /\b(?:cc|creative commons) ?(by(?: (?:nc|nd|sa))*)\b/.exec(words)?.[1];
  if (elements !== undefined) return ofElements(elements);
  const other = OTHERS.find(([pattern]) => pattern.test(words));
  return other === undefined ? inWords(words) : other[1];
}

function ofElements(elements: string): Condition[] | undefined {
  const conditions = elements.split(/[\s-]/).map((element) => ELEMENTS[element]);
  return conditions.includes(undefined) ? undefined : (conditions as Condition[]);
}

/** "Creative Commons Attribution Non Commercial". */
function inWords(words: string): Condition[] | undefined {
  if (!words.includes("attribution")) return undefined;
  return [
    "attribution",
    ...(/non ?commercial/.test(words) ? (["no commercial use"] as const) : []),
    ...(/no ?deriv/.test(words) ? (["no adaptations"] as const) : []),
    ...(/share ?alike/.test(words) ? (["share alike"] as const) : []),
  ];
}

/**
 * Conditions of the data's licence that publishing under another would not keep. An atlas is an adaptation of its records,
 * so data that allow none go under no licence.
 *
 * @param data conditions of the data's licence
 * @param atlas conditions of the atlas's licence
 * @returns what is not kept; none where the data may be published under the atlas's licence
 * @example notKept(["attribution", "no commercial use"], ["attribution"]) // => ["no commercial use"]
 */
export function notKept(data: readonly Condition[], atlas: readonly Condition[]): Condition[] {
  return data.filter(
    (condition) => condition === "no adaptations" || condition === "permission" || !atlas.includes(condition),
  );
}
