/** One figure as a row of a table. */
export interface FigureRow {
  readonly name: string;
  /** Place on the methods page that the name leads to. */
  readonly anchor?: string;
  /** Small words under the name. */
  readonly note?: string;
  /** In words, with its sign; empty where the method is silent. */
  readonly estimate: string;
  /** In words; empty where there is none. */
  readonly interval: string;
  /** Why the method is not applicable; empty where it speaks. */
  readonly reason: string;
  /** What the figure rests on; null where a number has no meaning for it. */
  readonly counts: readonly (number | null)[];
  /** What the figure says, in a word or two. */
  readonly says?: string;
  /** Whether it says something else than the first row: marked with a bar. */
  readonly differs?: boolean;
}
