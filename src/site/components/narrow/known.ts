/** What a person has told of a sighting, and its form in the address of the page. */
export interface Known {
  /** Code of a 10 km square; empty for none. */
  readonly square: string;
  /** Year-month-day; empty for none. */
  readonly date: string;
  /** Caste id; empty for none. */
  readonly caste: string;
  /** Answers by question; `UNSEEN` for one that could not be seen. */
  readonly states: ReadonlyMap<string, string>;
}

/** Stands for a part that was looked for and not seen. */
export const UNSEEN = "unseen";

/**
 * The part of the address behind `#`, which no browser sends to a server.
 *
 * @returns empty where nothing is known
 * @example hashOf({ square: "NZ27", date: "2026-05-12", caste: "", states: new Map([["tail", "red"]]) }) // "where=NZ27&when=2026-05-12&tail=red"
 */
export function hashOf({ square, date, caste, states }: Known): string {
  const told = [["where", square], ["when", date], ["caste", caste], ...states].filter(([, value]) => value !== "");
  return new URLSearchParams(told as [string, string][]).toString();
}

/**
 * What an address tells; anything it does not understand is left out.
 *
 * @param hash with or without its `#`
 * @param offered answers of each question, and ids of the castes
 * @example knownOf("#where=NZ27&tail=red&tail=blue&nose=long", { states: new Map([["tail", ["red"]]]), castes: [] }).states // Map { "tail" => "red" }
 */
export function knownOf(
  hash: string,
  offered: { readonly states: ReadonlyMap<string, readonly string[]>; readonly castes: readonly string[] },
): Known {
  const told = new URLSearchParams(hash.replace(/^#/, ""));
  const date = told.get("when") ?? "";
  const caste = told.get("caste") ?? "";
  const states = [...offered.states].flatMap(([id, answers]): [string, string][] => {
    const answer = told.get(id) ?? "";
    return answers.includes(answer) || answer === UNSEEN ? [[id, answer]] : [];
  });
  return {
    square: (told.get("where") ?? "").replace(/[^A-Za-z0-9]/g, ""),
    date: /^\d{4}-\d{2}-\d{2}$/.test(date) ? date : "",
    caste: offered.castes.includes(caste) ? caste : "",
    states: new Map(states),
  };
}

/**
 * The answers the helper is given: those that were seen.
 *
 * @example answersOf({ states: new Map([["tail", "red"], ["face", "unseen"]]), … }).states // Map { "tail" => "red" }
 */
export function answersOf({ caste, states }: Pick<Known, "caste" | "states">): {
  caste: string | undefined;
  states: Map<string, string>;
} {
  return {
    caste: caste === "" ? undefined : caste,
    states: new Map([...states].filter(([, answer]) => answer !== UNSEEN)),
  };
}
