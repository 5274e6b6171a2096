import type {
  DeskAnswer,
  GroupAnswer,
  RecordAnswer,
  RulingAnswer,
  RulingRequest,
} from "../../../review/desk/answers.ts";
import { ask, Refused, send } from "./ask.ts";
import { element } from "./dom.ts";
import { asQuery } from "./filter-form.ts";
import { keep, kept } from "./kept.ts";
import type { Ledger } from "./ledger.ts";
import { labelled, openSheet, options, taxonField, withChoices } from "./sheets.ts";

/** What is kept for the next ruling on the record. */
export type Draft = Pick<RulingRequest, "identification" | "partSeen" | "why">;

const NOTHING: Draft = { identification: "", partSeen: "", why: "" };

/** What a ruling needs to know of the page around it. */
export interface Place {
  desk: DeskAnswer;
  ledger: Ledger;
  record(): RecordAnswer | undefined;
  /** Goes on to the next open record at once, before the ruling is written. */
  advance(): Promise<void>;
  /** Says what was done, for eyes and screen readers. */
  tell(text: string, isBad?: boolean): void;
  draftChanged(draft: Draft): void;
  /** A ruling on these records is written, or taken back where `ruling` is empty. */
  settled(records: number[], ruling: string): void;
}

/** Rulings as they are made: each sent after the last, and those of this window kept for taking back. */
export class Rulings {
  #draft = NOTHING;
  #last: Promise<unknown> = Promise.resolve();
  readonly #made: { id: string; records: number[]; words: string }[] = [];
  readonly #place: Place;

  constructor(place: Place) {
    this.#place = place;
  }

  /** Rules on the record that is shown, and goes on. */
  async rule(ruling: string, value = "", more: Partial<RulingRequest> = {}): Promise<void> {
    const { ledger, advance } = this.#place;
    const record = this.#place.record();
    if (record === undefined) return;
    const request = this.#request(ruling, value, record, more);
    this.forget();
    await ledger.enter(record.record);
    ledger.mark(new Set([record.record]), ruling);
    await advance();
    this.#send(
      request,
      [record.record],
      `${ruling}${value === "" ? "" : ` ${value}`}: ${record.said.name}, ${record.said.place}`,
    );
  }

  #request(ruling: string, value: string, record: RecordAnswer, more: Partial<RulingRequest>): RulingRequest {
    const asked = record.questions.find(({ severity }) => severity !== "note");
    const current = this.#place.ledger.current?.line;
    return {
      ruling,
      value,
      ...this.#draft,
      who: kept("who"),
      check: (current?.record === record.record ? current.check : asked?.check) ?? "",
      record: record.record,
      group: null,
      ...more,
    };
  }

  #send(request: RulingRequest, records: number[], words: string): void {
    const { tell, ledger, settled } = this.#place;
    this.#last = this.#last.then(async () => {
      try {
        const answer = await send<RulingAnswer>("rulings", request);
        this.#made.push({ id: answer.id, records: answer.records, words });
        tell(`${words}. z takes it back.`);
        settled(answer.records, request.ruling);
      } catch (error) {
        ledger.mark(new Set(records), "");
        settled(records, "");
        tell(`Not written: ${words}. ${error instanceof Refused ? error.message : String(error)}`, true);
      }
    });
  }

  /** Takes back the last ruling of this window, a whole batch where it was one. */
  takeBack(): void {
    const { tell, ledger, settled } = this.#place;
    this.#last = this.#last.then(async () => {
      const last = this.#made.pop();
      if (last === undefined) {
        tell("Nothing was ruled in this window that could be taken back.");
        return;
      }
      try {
        await send("take-back", { id: last.id, who: kept("who") });
        ledger.mark(new Set(last.records), "");
        settled(last.records, "");
        tell(`Taken back: ${last.words}.`);
      } catch (error) {
        this.#made.push(last);
        tell(`Not taken back. ${error instanceof Refused ? error.message : String(error)}`, true);
      }
    });
  }

  /** Empties what was kept for the next ruling. */
  forget(): void {
    this.#set(NOTHING);
  }

  #set(draft: Draft): void {
    this.#draft = draft;
    this.#place.draftChanged(draft);
  }

  /** Corrects fields; a proposal stands in them already. */
  correct(): void {
    const record = this.#place.record();
    if (record === undefined) return;
    const proposed = new Map(
      (record.questions.find(({ proposal }) => proposal !== "")?.proposal ?? "").split(";").flatMap((part) => {
        const [field = "", ...rest] = part.split("=");
        return rest.length === 0 ? [] : [[field.trim(), rest.join("=").trim()] as const];
      }),
    );
    const says: Record<string, string> = {
      scientificName: record.said.name,
      gridReference: record.said.place,
      eventDate: record.said.date,
      caste: record.said.kind,
    };
    const fields = this.#place.desk.correctable.map((name) =>
      element("input", { name, value: proposed.get(name) ?? "", autocomplete: "off" }),
    );
    openSheet(
      proposed.size > 0 ? "Correct as proposed" : "Correct",
      fields.map((field) => labelled(field.name, field, `says ${says[field.name] || "nothing"}`)),
      () => {
        const filled = fields.filter(({ value }) => value.trim() !== "");
        if (filled.some(({ value }) => value.includes(";"))) this.#place.tell("A correction holds no semicolon.", true);
        else if (filled.length > 0)
          void this.rule("correct", filled.map(({ name, value }) => `${name}=${value.trim()}`).join("; "));
      },
    );
  }

  /** Gives the record another name of the checklist. */
  reidentify(): void {
    if (this.#place.record() === undefined) return;
    const field = taxonField(this.#place.desk.taxa);
    openSheet("Re-identify as", [field.node], () => void this.rule("re-identify", field.value()));
  }

  /** Chooses what is known of the identification: for the next ruling, or as a ruling of its own. */
  identify(): void {
    const { desk } = this.#place;
    const alone = element("input", { type: "checkbox", name: "alone" });
    const sheet = openSheet(
      "Identification",
      [
        options(desk.identifications, (identification, isAlone) => {
          sheet.close();
          this.#set({ ...this.#draft, identification });
          if (isAlone || alone.checked) void this.rule("identify");
        }),
        element("label", { class: "check" }, alone, "rule this alone, and nothing on the status (Shift and Enter)"),
      ],
      () => this.#set({ ...this.#draft, identification: "" }),
      "None",
    );
  }

  /** Says which part of the body was seen. */
  part(): void {
    const [field, list] = withChoices("part", this.#draft.partSeen, this.#place.desk.parts);
    if (field === undefined || list === undefined) return;
    openSheet(
      "Part seen",
      [labelled("The identification rests on", field), list],
      () => this.#set({ ...this.#draft, partSeen: (field as HTMLInputElement).value }),
      "Keep",
    );
  }

  /** Says why. */
  why(): void {
    const { desk } = this.#place;
    const [field, list] = withChoices("why", this.#draft.why, desk.reasons);
    if (field === undefined || list === undefined) return;
    openSheet(
      "Why",
      [labelled("In words", field, "kept with the next ruling; name nobody"), list],
      () => {
        const why = (field as HTMLInputElement).value.trim();
        this.#set({ ...this.#draft, why });
        if (why !== "") desk.reasons = [why, ...desk.reasons.filter((other) => other !== why)].slice(0, 12);
      },
      "Keep",
    );
  }

  /** Rules on all open records of the look, after saying how many and which. */
  async whole(): Promise<void> {
    const { ledger, tell } = this.#place;
    const line = ledger.current?.line;
    if (line === undefined) return;
    const group = await ask<GroupAnswer>(`group/${line.look}?${asQuery(ledger.filter)}`);
    const filter = ledger.filter;
    if (group.records < 2) {
      tell("This look has one open record: rule on it alone.");
      return;
    }
    const others = element("input", { type: "checkbox", name: "others" });
    const rulings = element(
      "select",
      { name: "ruling" },
      ...["use", "hold", "leave out", "correct", "re-identify"].map((word) => element("option", {}, word)),
    );
    const value = element("input", {
      name: "value",
      autocomplete: "off",
      value: group.proposals.length === 1 ? (group.proposals[0] ?? "") : "",
    });
    const [why, list] = withChoices("why", this.#draft.why, this.#place.desk.reasons);
    const alone = group.records - group.others;
    openSheet(
      `Rule on ${alone} records at once`,
      [
        element("p", {}, `On: ${group.filter}.`),
        group.others > 0
          ? element(
              "label",
              { class: "check" },
              others,
              `the ${group.others} that are asked something else too, as well`,
            )
          : "",
        labelled("Ruling", rulings),
        labelled("Value", value, "correct: field=value; field=value. re-identify: the name"),
        labelled("Why", why ?? value),
        list ?? "",
        element(
          "p",
          { class: "small" },
          "Each record gets a row of its own, all with one batch: z takes it back as one.",
        ),
      ],
      () => {
        const count = others.checked ? group.records : alone;
        if (count === 0) return;
        const request = {
          ruling: rulings.value,
          value: ["correct", "re-identify"].includes(rulings.value) ? value.value : "",
          ...this.#draft,
          why: (why as HTMLInputElement).value,
          who: kept("who"),
          check: line.check,
          record: null,
          group: { look: line.look, filter, others: others.checked, count },
        };
        this.forget();
        this.#send(request, [], `${rulings.value} on ${count} records`);
      },
      "Rule on all",
    );
    rulings.focus();
  }

  /** Remembers in this window who rules. */
  static remember(who: string): void {
    keep("who", who.trim());
  }
}
