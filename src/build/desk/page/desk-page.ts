import type { DeskAnswer, RecordAnswer } from "../../../review/desk/answers.ts";
import { button, element } from "./dom.ts";
import { putFigures } from "./figures.ts";
import { type FilterForm, filterForm } from "./filter-form.ts";
import { KeptAnswers } from "./kept-answers.ts";
import { listen } from "./keys.ts";
import { Ledger, type Row } from "./ledger.ts";
import { lookSheet } from "./look-sheet.ts";
import { KEYS, keysSheet, mast } from "./mast.ts";
import { type RecordActs, recordPage } from "./record-page.ts";
import { correctSheet, identifySheet, partSheet, reidentifySheet, whySheet } from "./ruling-sheets.ts";
import { type Draft, Rulings } from "./rulings.ts";

/** The desk: the ledger, the record that is chosen in it, and the rulings below. */
export class DeskPage {
  readonly #desk: DeskAnswer;
  readonly #article = element("article", { class: "record", id: "record", tabindex: "-1", "aria-label": "Record" });
  readonly #told = element("p", { id: "told", role: "status" });
  readonly #drafted = element("p", { class: "drafted" });
  readonly #answers = new KeptAnswers();
  readonly #ledger = new Ledger((row, opened) => this.#chosen(row, opened));
  readonly #filter: FilterForm;
  readonly #rulings: Rulings;
  #shown: RecordAnswer | undefined;
  #wanted = 0;

  constructor(desk: DeskAnswer) {
    this.#desk = desk;
    this.#filter = filterForm(desk, () => void this.#ledger.load(this.#filter.read()));
    this.#rulings = new Rulings({
      ledger: this.#ledger,
      record: () => this.#shown,
      tell: (text, isBad) => this.#tell(text, isBad),
      draftChanged: (draft) => this.#showDraft(draft),
      settled: (records) => this.#settled(records),
    });
  }

  /** Puts the desk into the document, and loads the worklist. */
  async open(): Promise<void> {
    document.title = `Review desk: ${this.#desk.title}`;
    const { node, count, foot } = this.#ledger;
    const does = this.#keys();
    const toolbar = KEYS.map(([key, word]) => button({}, () => does[key]?.(), element("kbd", {}, key), ` ${word}`));
    this.#screen("ledger");
    document.body.append(
      element("a", { class: "skip", href: "#record" }, "To the record"),
      mast(this.#desk),
      element(
        "main",
        {},
        element("nav", { class: "ledger", "aria-label": "Questions" }, this.#filter.node, count, node, foot),
        this.#article,
      ),
      element(
        "footer",
        { class: "rulings" },
        element("div", { class: "told" }, this.#told, this.#drafted),
        element("div", { role: "toolbar", "aria-label": "Rulings" }, ...toolbar),
      ),
    );
    listen(does);
    window.addEventListener("hashchange", () => this.#byAddress());
    await this.#ledger.load(this.#filter.read());
    this.#byAddress();
  }

  #keys(): Record<string, () => void> {
    const [rulings, ledger, desk] = [this.#rulings, this.#ledger, this.#desk];
    return {
      j: () => void ledger.step(1),
      k: () => void ledger.step(-1),
      ArrowDown: () => void ledger.step(1),
      ArrowUp: () => void ledger.step(-1),
      Enter: () => this.#enter(),
      Escape: () => this.#acts.back(),
      u: () => void rulings.rule("use"),
      h: () => void rulings.rule("hold"),
      l: () => void rulings.rule("leave out"),
      c: () => correctSheet(rulings, desk),
      r: () => reidentifySheet(rulings, desk),
      i: () => identifySheet(rulings, desk),
      p: () => partSheet(rulings, desk),
      w: () => whySheet(rulings, desk),
      b: () => void lookSheet(rulings, desk),
      z: () => rulings.takeBack(),
      "/": () => this.#filter.focus(),
      "?": () => keysSheet(),
    };
  }

  readonly #acts: RecordActs = {
    open: (record) => {
      location.hash = `record-${record}`;
    },
    link: (ruling, key) => void this.#rulings.rule(ruling, key),
    correct: () => correctSheet(this.#rulings, this.#desk),
    whole: () => void lookSheet(this.#rulings, this.#desk),
    back: () => {
      this.#screen("ledger");
      this.#ledger.current?.node.querySelector("button")?.focus();
    },
  };

  #chosen(row: Row, opened: boolean): void {
    if (opened && (row.kind === "record" || row.line.records === 1)) this.#screen("record");
    this.#open(row.line.record);
  }

  #enter(): void {
    const row = this.#ledger.current;
    if (row?.kind === "look" && row.line.records > 1) void this.#ledger.toggle();
    else {
      this.#screen("record");
      document.getElementById("record-name")?.focus();
    }
  }

  #open(record: number): void {
    this.#show(record).catch((error: unknown) => this.#tell(String(error), true));
  }

  async #show(record: number): Promise<void> {
    this.#wanted = record;
    // Nobody rules on what is not shown yet.
    this.#shown = undefined;
    this.#article.setAttribute("aria-busy", "true");
    const answer = await this.#answers.record(record);
    if (this.#wanted !== record) return;
    this.#shown = answer;
    this.#article.removeAttribute("aria-busy");
    this.#article.replaceChildren(recordPage(answer, this.#desk, this.#acts));
    this.#article.scrollTop = 0;
    this.#article.dataset["record"] = String(record);
    const figures = putFigures(answer, this.#desk, this.#answers, this.#acts, () => this.#wanted === record);
    const next = this.#ledger.next();
    if (next !== undefined) await this.#answers.ahead(next.line.record);
    await figures;
  }

  #settled(records: number[]): void {
    for (const record of records) this.#answers.forget(record);
    const shown = this.#shown?.record;
    if (shown !== undefined && records.includes(shown)) this.#open(shown);
  }

  /** The record an address names, such as one of the same visit. */
  #byAddress(): void {
    const record = Number(/^#record-(\d+)$/.exec(location.hash)?.[1] ?? 0);
    if (record === 0) return;
    this.#screen("record");
    this.#open(record);
  }

  #screen(name: "ledger" | "record"): void {
    document.body.dataset["screen"] = name;
  }

  #tell(text: string, isBad = false): void {
    this.#told.textContent = text;
    this.#told.classList.toggle("bad", isBad);
  }

  #showDraft({ identification, partSeen, why }: Draft): void {
    const parts = [identification, partSeen && `seen: ${partSeen}`, why].filter(Boolean);
    this.#drafted.textContent = parts.length === 0 ? "" : `With the next ruling: ${parts.join("; ")}`;
  }
}
