import type { DeskFilter, Line, LinesAnswer } from "../../../review/desk/answers.ts";
import { ask } from "./ask.ts";
import { button, counted, element, figure } from "./dom.ts";
import { asQuery } from "./filter-form.ts";
import { lineButton } from "./ledger-line.ts";

/** A visible line: a look, or one of its records. */
export interface Row {
  line: Line;
  kind: "look" | "record";
  node: HTMLLIElement;
}

/** The list at the left: one line a look, unfolded into its records where wanted. */
export class Ledger {
  readonly node = element("ol", { class: "lines" });
  readonly count = element("p", { class: "count", id: "count" });
  readonly #more = button({ class: "more", hidden: true }, () => void this.#loadMore(), "More of the list");
  readonly foot = element("p", {}, this.#more);
  #rows: Row[] = [];
  #at = -1;
  #filter: DeskFilter | undefined;
  #all = 0;
  #looks = 0;
  readonly #chosen: (row: Row, opened: boolean) => void;

  /**
   * Makes an empty list.
   *
   * @param chosen called when another line is chosen; `opened` where it was pressed or entered
   */
  constructor(chosen: (row: Row, opened: boolean) => void) {
    this.#chosen = chosen;
  }

  get current(): Row | undefined {
    return this.#rows[this.#at];
  }

  get filter(): DeskFilter {
    if (this.#filter === undefined) throw new Error("the list was not loaded");
    return this.#filter;
  }

  /** Loads the list under a filter, and chooses its first line. */
  async load(filter: DeskFilter): Promise<void> {
    this.#filter = filter;
    const answer = await ask<LinesAnswer>(`lines?${asQuery(filter)}`);
    if (this.#filter !== filter) return;
    this.node.replaceChildren();
    this.#rows = [];
    this.#at = -1;
    this.#looks = 0;
    this.#put(answer);
    if (this.#rows.length > 0) this.choose(0, false);
  }

  async #loadMore(): Promise<void> {
    const answer = await ask<LinesAnswer>(`lines?${asQuery(this.filter)}&start=${this.#looks}`);
    this.#put(answer);
  }

  #put({ lines, all, records, open }: LinesAnswer): void {
    this.#all = all;
    this.#looks += lines.length;
    this.#count(records, open);
    const rows = lines.map((line) => this.#rowOf(line, "look"));
    this.#rows.push(...rows);
    this.node.append(...rows.map(({ node }) => node));
    this.#more.hidden = this.#looks >= this.#all;
  }

  #count(records: number, open: number): void {
    const looks = `${counted(this.#all, "look")} for ${counted(records, "record")}`;
    this.count.textContent =
      this.#all === 0 ? "Nothing is asked here." : open === records ? looks : `${looks}, ${figure(open)} still open`;
  }

  #rowOf(line: Line, kind: Row["kind"]): Row {
    const node = element("li", { class: kind });
    const row: Row = { line, kind, node };
    this.#fill(row);
    return row;
  }

  #fill(row: Row): void {
    const { line, kind, node } = row;
    const isUnfolded = kind === "look" && line.records > 1 ? this.#isUnfolded(row) : undefined;
    const press = lineButton(line, { kind, isCurrent: this.current === row, isUnfolded }, () => {
      this.choose(this.#rows.indexOf(row), true);
      if (isUnfolded !== undefined) void this.toggle();
    });
    node.replaceChildren(press);
  }

  #isUnfolded(row: Row): boolean {
    const next = this.#rows[this.#rows.indexOf(row) + 1];
    return next?.kind === "record" && next.line.look === row.line.look;
  }

  /** Chooses a line and brings it into view. */
  choose(index: number, opened: boolean): void {
    const row = this.#rows[index];
    if (row === undefined) return;
    this.current?.node.querySelector("button")?.removeAttribute("aria-current");
    this.#at = index;
    const press = row.node.querySelector("button");
    press?.setAttribute("aria-current", "true");
    press?.focus({ preventScroll: true });
    row.node.scrollIntoView({ block: "nearest" });
    this.#chosen(row, opened);
  }

  /** One line down (1) or up (−1); at the end more of the list is fetched. */
  async step(by: 1 | -1): Promise<void> {
    if (by === 1 && this.#at >= this.#rows.length - 1 && !this.#more.hidden) await this.#loadMore();
    this.choose(Math.min(this.#rows.length - 1, Math.max(0, this.#at + by)), false);
  }

  /** The record after the current one that is still open, without choosing it. */
  next(): Row | undefined {
    return this.#rows.slice(this.#at + 1).find((row) => this.#isOpen(row));
  }

  /** Chooses the next line that is still open. */
  async advance(): Promise<void> {
    if (this.next() === undefined && !this.#more.hidden) await this.#loadMore();
    const next = this.next();
    if (next !== undefined) this.choose(this.#rows.indexOf(next), false);
  }

  #isOpen(row: Row): boolean {
    return row.line.open > 0 && !this.#isUnfolded(row);
  }

  /** Unfolds the current look into its records, or folds it. */
  async toggle(): Promise<void> {
    const row = this.current;
    if (row === undefined || row.kind !== "look" || row.line.records < 2) return;
    if (this.#isUnfolded(row)) {
      const index = this.#rows.indexOf(row);
      const gone = this.#rows.slice(index + 1).findIndex(({ kind }) => kind === "look");
      const removed = this.#rows.splice(index + 1, gone < 0 ? Number.POSITIVE_INFINITY : gone);
      for (const { node } of removed) node.remove();
    } else await this.#unfold(row);
    row.node.querySelector("button")?.setAttribute("aria-expanded", String(this.#isUnfolded(row)));
  }

  async #unfold(row: Row): Promise<void> {
    const records: Line[] = [];
    for (;;) {
      const page = await ask<Line[]>(`look/${row.line.look}?${asQuery(this.filter)}&start=${records.length}`);
      records.push(...page);
      if (page.length === 0 || records.length >= row.line.records || records.length >= 500) break;
    }
    const rows = records.map((line) => this.#rowOf(line, "record"));
    this.#rows.splice(this.#rows.indexOf(row) + 1, 0, ...rows);
    row.node.after(...rows.map(({ node }) => node));
  }

  /** Unfolds the current look and chooses a record of it: rulings on one record are made on its own line. */
  async enter(record: number): Promise<void> {
    const row = this.current;
    if (row === undefined || row.kind !== "look" || row.line.records < 2) return;
    if (!this.#isUnfolded(row)) await this.toggle();
    const index = this.#rows.findIndex(
      ({ kind, line }) => kind === "record" && line.look === row.line.look && line.record === record,
    );
    if (index >= 0) this.choose(index, false);
  }

  /** Shows records as ruled, or as open again where the ruling is empty. */
  mark(records: ReadonlySet<number>, ruling: string): void {
    for (const row of this.#rows) {
      const { line } = row;
      const isSeveral = row.kind === "look" && line.records > 1;
      if (isSeveral || !records.has(line.record)) continue;
      line.open = ruling === "" ? 1 : 0;
      line.ruling = ruling;
      this.#redraw(row);
    }
    for (const row of this.#rows.filter(({ kind, line }) => kind === "look" && line.records > 1)) {
      const own = this.#rows.filter(({ kind, line }) => kind === "record" && line.look === row.line.look);
      if (own.length === 0) continue;
      row.line.open = own.filter(({ line }) => line.open > 0).length + Math.max(0, row.line.records - own.length);
      this.#redraw(row);
    }
  }

  /** Shows so many records of a folded look as ruled, or as open again where the ruling is empty. */
  markLook(look: number, records: number, ruling: string): void {
    const row = this.#rows.find(({ kind, line }) => kind === "look" && line.look === look);
    if (row === undefined || this.#isUnfolded(row)) return;
    const { line } = row;
    line.open = Math.min(line.records, Math.max(0, line.open + (ruling === "" ? records : -records)));
    line.ruling = line.open === 0 ? ruling : "";
    this.#redraw(row);
  }

  #redraw(row: Row): void {
    const hadFocus = row.node.contains(document.activeElement);
    this.#fill(row);
    if (hadFocus) row.node.querySelector("button")?.focus({ preventScroll: true });
  }
}
