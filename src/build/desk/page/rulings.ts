import type { RecordAnswer, RulingAnswer, RulingRequest } from "../../../review/desk/answers.ts";
import { Refused, send } from "./ask.ts";
import { kept } from "./kept.ts";
import type { Ledger } from "./ledger.ts";

/** What is kept for the next ruling on the record. */
export type Draft = Pick<RulingRequest, "identification" | "partSeen" | "why">;

const NOTHING: Draft = { identification: "", partSeen: "", why: "" };

/** What rulings need to know of the page around them. */
export interface Place {
  ledger: Ledger;
  /** The record that is shown; undefined while the next is still coming. */
  record(): RecordAnswer | undefined;
  /** Says what was done, for eyes and screen readers. */
  tell(text: string, isBad?: boolean): void;
  draftChanged(draft: Draft): void;
  /** A ruling on these records was written, or taken back. */
  settled(records: number[]): void;
}

/** A ruling of this window, as it is taken back. */
interface Made {
  id: string;
  records: number[];
  look: number | null;
  words: string;
}

/** Rulings as they are made: each sent after the last, and those of this window kept for taking back. */
export class Rulings {
  draft = NOTHING;
  #last: Promise<unknown> = Promise.resolve();
  readonly #made: Made[] = [];
  readonly place: Place;

  constructor(place: Place) {
    this.place = place;
  }

  /** The record that stands there now; a key that is pressed before it came does nothing. */
  shown(): RecordAnswer | undefined {
    const record = this.place.record();
    if (record === undefined) this.place.tell("The record is not here yet: nothing was ruled.");
    return record;
  }

  /** Keeps something for the next ruling. */
  keep(draft: Partial<Draft>): void {
    this.draft = { ...this.draft, ...draft };
    this.place.draftChanged(this.draft);
  }

  /** Rules on the record that is shown, and goes on to the next open one before the ruling is written. */
  async rule(ruling: string, value = ""): Promise<void> {
    const { ledger } = this.place;
    const record = this.shown();
    if (record === undefined) return;
    const asked = record.questions.find(({ severity }) => severity !== "note");
    const line = ledger.current?.line;
    const request = this.#request(ruling, value, {
      check: (line?.record === record.record ? line.check : asked?.check) ?? "",
      record: record.record,
    });
    await ledger.enter(record.record);
    ledger.mark(new Set([record.record]), ruling);
    await ledger.advance();
    this.#send(request, `${ruling}${value === "" ? "" : ` ${value}`}: ${record.said.name}, ${record.said.place}`);
  }

  /** Rules on the open records of a look. */
  ruleLook(ruling: string, value: string, check: string, group: NonNullable<RulingRequest["group"]>): void {
    this.#send(this.#request(ruling, value, { check, group }), `${ruling} on ${group.count} records`);
  }

  #request(ruling: string, value: string, on: Partial<RulingRequest>): RulingRequest {
    const request = { ruling, value, ...this.draft, who: kept("who"), check: "", record: null, group: null, ...on };
    this.keep(NOTHING);
    return request;
  }

  #send(request: RulingRequest, words: string): void {
    const look = request.group?.look ?? null;
    const own = request.record === null ? [] : [request.record];
    this.#after(`Not written: ${words}.`, own, async () => {
      const { id, records } = await send<RulingAnswer>("rulings", request);
      this.#made.push({ id, records, look, words });
      this.#settle({ records, look }, request.ruling);
      this.place.tell(`${words}. z takes it back.`);
      if (look !== null) await this.place.ledger.advance();
    });
  }

  /** Takes back the last ruling of this window, a whole batch where it was one. */
  takeBack(): void {
    this.#after("Not taken back.", [], async () => {
      const last = this.#made.at(-1);
      if (last === undefined) {
        this.place.tell("Nothing was ruled in this window that could be taken back.");
        return;
      }
      await send("take-back", { id: last.id, who: kept("who") });
      this.#made.pop();
      this.#settle(last, "");
      this.place.tell(`Taken back: ${last.words}.`);
    });
  }

  #settle({ records, look }: Pick<Made, "records" | "look">, ruling: string): void {
    this.place.ledger.mark(new Set(records), ruling);
    if (look !== null) this.place.ledger.markLook(look, records.length, ruling);
    this.place.settled(records);
  }

  /** Does something after all that was begun before; where it fails the records are open again, and it is said. */
  #after(failed: string, records: number[], work: () => Promise<void>): void {
    this.#last = this.#last.then(work).catch((error: unknown) => {
      this.place.ledger.mark(new Set(records), "");
      this.place.settled(records);
      this.place.tell(`${failed} ${error instanceof Refused ? error.message : String(error)}`, true);
    });
  }
}
