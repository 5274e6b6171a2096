import type { Say } from "../../words/client.ts";
import { fillAnswer } from "./answer-line.ts";
import { type Answer, type Answers, Finder } from "./answers.ts";
import type { SearchFile } from "./search-file.ts";
import { Suggestions } from "./suggestions.ts";

/** Lines under the field, and on the page of its own. */
const FEW = 8;
const MANY = 30;

/** Elements of the page. */
export interface FindElements {
  readonly form: HTMLFormElement;
  readonly field: HTMLInputElement;
  readonly list: HTMLElement;
  /** Where it is announced what was found. */
  readonly said: HTMLElement;
  /** The list of everything found, on the page of its own; null elsewhere. */
  readonly results: HTMLElement | null;
  readonly say: Say;
}

/**
 * The field that finds: what is typed is compared on the device with the names of one file, which comes when the field
 * is first entered. What was typed stays behind the # of an address, which no server is told.
 */
export class FindField {
  readonly #page: FindElements;
  readonly #top: string;
  readonly #suggestions: Suggestions;
  #finder: Promise<Finder> | undefined;
  #asked = 0;

  constructor(page: FindElements) {
    this.#page = page;
    this.#top = page.form.dataset["top"] ?? "/";
    this.#suggestions = new Suggestions({ field: page.field, list: page.list, open: (answer) => this.#open(answer) });
  }

  /** Listens to the field and, on the page of its own, to the address. */
  start(): void {
    const { form, field, results } = this.#page;
    const failed = () => this.#tell(this.#page.say("find.failed"));
    field.addEventListener("focus", () => void this.#names().catch(() => undefined));
    field.addEventListener("input", () => void this.#suggest().catch(failed));
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.#submit(field.value.trim()).catch(failed);
    });
    if (results === null) return;
    const fromAddress = () => {
      field.value = textOfHash();
      if (field.value !== "") this.#showAll(field.value).catch(failed);
    };
    addEventListener("hashchange", fromAddress);
    fromAddress();
  }

  async #suggest(): Promise<void> {
    const text = this.#page.field.value.trim();
    const answers = await this.#ask(text, FEW);
    if (answers === undefined) return;
    this.#suggestions.show(answers.lines);
    this.#tell(text === "" ? "" : this.#page.say("find.count", { n: answers.lines.length }));
  }

  async #submit(text: string): Promise<void> {
    if (text === "") return;
    const { chosen } = this.#suggestions;
    this.#suggestions.close();
    const answers = chosen === undefined ? await this.#ask(text, MANY) : undefined;
    const clear = chosen ?? answers?.clear;
    if (clear !== undefined) this.#open(clear);
    else if (answers === undefined) return;
    else if (this.#page.results === null && answers.lines.length > 0)
      location.assign(`${this.#top}find/#${encodeURIComponent(text)}`);
    else {
      if (this.#page.results !== null) history.replaceState(null, "", `#${encodeURIComponent(text)}`);
      this.#list(answers, text);
    }
  }

  async #showAll(text: string): Promise<void> {
    const answers = await this.#ask(text, MANY);
    if (answers !== undefined) this.#list(answers, text);
  }

  #list({ lines, remark }: Answers, text: string): void {
    this.#page.results?.replaceChildren(...lines.map((line) => linkLine(line, this.#top)));
    this.#tell(remark || this.#page.say("find.many", { n: lines.length, text }));
  }

  #open({ path }: Answer): void {
    this.#suggestions.close();
    location.assign(`${this.#top}${path}`);
  }

  /** Answers come when names have; an answer to a text that has changed since is dropped. */
  async #ask(text: string, most: number): Promise<Answers | undefined> {
    this.#asked += 1;
    const mine = this.#asked;
    const answers = await (await this.#names()).answers(text, most);
    return mine === this.#asked ? answers : undefined;
  }

  #names(): Promise<Finder> {
    this.#finder ??= fetchNames(this.#page.form.dataset["names"] ?? "", this.#page.say).catch((error: unknown) => {
      this.#finder = undefined;
      throw error;
    });
    return this.#finder;
  }

  #tell(text: string): void {
    this.#page.said.textContent = text;
  }
}

async function fetchNames(address: string, say: Say): Promise<Finder> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return new Finder((await answer.json()) as SearchFile, say);
}

function textOfHash(): string {
  try {
    return decodeURIComponent(location.hash.slice(1));
  } catch {
    return "";
  }
}

function linkLine(answer: Answer, top: string): HTMLElement {
  const item = document.createElement("li");
  const link = document.createElement("a");
  link.href = `${top}${answer.path}`;
  fillAnswer(link, answer);
  item.append(link);
  return item;
}
