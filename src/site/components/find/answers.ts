import type { Say } from "../../words/client.ts";
import { placeOfText } from "./place-of-text.ts";
import type { SearchFile } from "./search-file.ts";
import { clearAnswer, type Found, indexNames, type NameIndex, search } from "./search-names.ts";

/** One line of an answer: where it leads, and why it is there, in words. */
export interface Answer {
  /** Address from the top of the pages of this language. */
  readonly path: string;
  readonly title: string;
  readonly language?: string | undefined;
  readonly kind: string;
  /** What was met: none where the title says it. */
  readonly why?: Why;
}

/** The name or place that was met, with the words round it. */
export interface Why {
  readonly before: string;
  readonly name: string;
  readonly after: string;
  readonly language?: string | undefined;
  readonly isScientific: boolean;
}

/** What a text may mean. */
export interface Answers {
  readonly lines: readonly Answer[];
  /** The line that is clearly meant, if one is. */
  readonly clear: Answer | undefined;
  /** What is to be said where there is no line. */
  readonly remark: string;
}

/** Answers texts from one file. */
export class Finder {
  readonly #file: SearchFile;
  readonly #index: NameIndex;
  readonly #say: Say;

  constructor(file: SearchFile, say: Say) {
    this.#file = file;
    this.#index = indexNames(file.entries);
    this.#say = say;
  }

  /** What a text may mean: places first, then names. @example (await finder.answers("nz26", 8)).clear?.path // "squares/nz26/" */
  async answers(text: string, most: number): Promise<Answers> {
    const place = await placeOfText(text, this.#file);
    const squares = (place?.squares ?? []).map((code) => this.#squareLine(code, text));
    const found = search(this.#index, text, most - squares.length);
    const lines = [...squares, ...found.map((one) => this.#nameLine(one))];
    const sure = squares.length === 0 ? clearAnswer(found) : undefined;
    const clear = squares.length === 1 ? squares[0] : sure === undefined ? undefined : this.#nameLine(sure);
    const without = place !== undefined && squares.length === 0;
    const key = !without ? "find.nothing" : place.without === "" ? "find.outside" : "find.no-square";
    const square = without ? place.without : (this.#example() ?? "");
    return { lines, clear, remark: lines.length > 0 ? "" : this.#say(key, { text, square }) };
  }

  #example(): string | undefined {
    const [beginning, ends] = Object.entries(this.#file.squares)[0] ?? [];
    return beginning === undefined ? undefined : `${beginning}${ends?.split(" ")[0] ?? ""}`;
  }

  #squareLine(code: string, text: string): Answer {
    const line = { path: `squares/${code.toLowerCase()}/`, title: code, kind: this.#say("find.kind.square") };
    const same = text.replace(/\s/g, "").toUpperCase() === code.toUpperCase();
    return same
      ? line
      : { ...line, why: { ...this.#round("find.why.place", "text"), name: text.trim(), isScientific: false } };
  }

  #nameLine({ entry, name: [name, kind, language] }: Found): Answer {
    const { path, title, language: own } = entry;
    const of = entry.names.find((one) => one[1] === "topic")?.[0] ?? "";
    const line = { path, title, language: own, kind: this.#say(`find.kind.${entry.kind}`, { kind: of }) };
    const isSaid = kind === "own" || name.toLowerCase() === title.toLowerCase();
    if (isSaid) return line;
    const isScientific = kind === "scientific" || kind === "synonym";
    return { ...line, why: { ...this.#round(`find.why.${kind}`, "name"), name, language, isScientific } };
  }

  /** The words of a message before and behind its name, so that the name can have a language of its own. */
  #round(key: string, name: string): Pick<Why, "before" | "after"> {
    const [before = "", after = ""] = this.#say(key, { [name]: "\0" }).split("\0");
    return { before, after };
  }
}
