import type { AroundAnswer, MapAnswer, RecordAnswer, SeasonAnswer } from "../../../review/desk/answers.ts";
import { ask } from "./ask.ts";

/** Answers of one kind that are kept; the oldest go. */
const MOST = 60;

/** What the desk answered before, so that going on and back is at once, and the next record is there before it is wanted. */
export class KeptAnswers {
  readonly #kept = new Map<string, Promise<unknown>>();

  record(record: number): Promise<RecordAnswer> {
    return this.#ask(`record/${record}`);
  }

  map(record: number): Promise<MapAnswer> {
    return this.#ask(`map/${record}`);
  }

  around(record: number): Promise<AroundAnswer> {
    return this.#ask(`around/${record}`);
  }

  /** Nothing where the name was not read. */
  season(taxon: string | undefined): Promise<SeasonAnswer> {
    return taxon === undefined
      ? Promise.resolve({ castes: [], visits: [] })
      : this.#ask(`season?taxon=${encodeURIComponent(taxon)}`);
  }

  /** Fetches a record, its map and its season before they are wanted. */
  async ahead(record: number): Promise<void> {
    try {
      const { taxon } = await this.record(record);
      await Promise.all([this.map(record), this.season(taxon?.id)]);
    } catch {
      // Whoever wants it will ask again, and be told what is wrong.
    }
  }

  /** Forgets a record, since something was ruled on it. */
  forget(record: number): void {
    this.#kept.delete(`record/${record}`);
  }

  #ask<Answer>(path: string): Promise<Answer> {
    const known = this.#kept.get(path) ?? ask<Answer>(path);
    this.#kept.delete(path);
    this.#kept.set(path, known);
    known.catch(() => this.#kept.delete(path));
    if (this.#kept.size > 4 * MOST) for (const old of [...this.#kept.keys()].slice(0, MOST)) this.#kept.delete(old);
    return known as Promise<Answer>;
  }
}
