import type { Say } from "../../words/client.ts";
import { type PlaceAnswer, placeOfDegrees, placeOfText } from "../narrow/places.ts";
import { inSeason, type SeasonFile, thirdOfDay } from "./in-season.ts";
import { keepSquare, keptSquare } from "./kept-place.ts";
import { PlaceFiles, type RoundSquare } from "./met-here.ts";
import { saidSeason, saidThird } from "./said-thirds.ts";
import { nearWords, seasonRow } from "./season-rows.ts";

/** Elements of the page. */
export interface SeasonElements {
  readonly section: HTMLElement;
  readonly heading: HTMLElement;
  readonly note: HTMLElement;
  readonly body: HTMLElement;
  readonly lastHead: HTMLElement;
  /** The form on the page of its own; null elsewhere. */
  readonly form: HTMLFormElement | null;
  readonly say: Say;
}

/** The list of what is in season: today and over the whole atlas, or at a date and round a square the reader chose. */
export class SeasonHere {
  readonly #page: SeasonElements;
  readonly #places: PlaceFiles;
  readonly #most: number;
  #third = thirdOfDay(new Date());
  #square = keptSquare();
  #file: SeasonFile | undefined;

  constructor(page: SeasonElements) {
    this.#page = page;
    this.#places = new PlaceFiles(page.section.dataset["places"] ?? "");
    this.#most = Number(page.section.dataset["most"] ?? 5);
  }

  async start(): Promise<void> {
    const answer = await fetch(this.#page.section.dataset["file"] ?? "");
    if (!answer.ok) return;
    this.#file = (await answer.json()) as SeasonFile;
    this.#listen();
    await this.#show();
  }

  #listen(): void {
    const { form } = this.#page;
    if (form === null) return;
    const [field, when] = [form.querySelector("input"), form.querySelector("select")];
    if (field === null || when === null) return;
    form.hidden = false;
    field.value = this.#square ?? "";
    when.value = String(this.#third);
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.#third = Number(when.value);
      void this.#choose(field.value.trim());
    });
    when.addEventListener("change", () => {
      this.#third = Number(when.value);
      void this.#show();
    });
    form.querySelector("[data-locate]")?.addEventListener("click", () => this.#locate(field));
    form.querySelector("[data-forget]")?.addEventListener("click", () => {
      field.value = "";
      void this.#choose("");
      field.focus();
    });
  }

  async #choose(text: string): Promise<void> {
    if (text === "") return await this.#take(undefined);
    try {
      const place = await placeOfText(text, await this.#places.index());
      await this.#answered(place, text);
    } catch {
      this.#tell(this.#page.say("in-season.failed"));
    }
  }

  #locate(field: HTMLInputElement): void {
    const failed = () => this.#tell(this.#page.say("in-season.no-location"));
    if (!("geolocation" in navigator)) {
      failed();
      return;
    }
    navigator.geolocation.getCurrentPosition(
      async ({ coords }) => {
        try {
          const place = await placeOfDegrees(coords, await this.#places.index());
          if ("square" in place) field.value = place.square;
          await this.#answered(place, "");
        } catch {
          this.#tell(this.#page.say("in-season.failed"));
        }
      },
      failed,
      { maximumAge: 600_000, timeout: 20_000 },
    );
  }

  async #answered(place: PlaceAnswer, text: string): Promise<void> {
    const { say } = this.#page;
    if ("square" in place) await this.#take(place.square);
    else if ("elsewhere" in place) this.#tell(say("in-season.no-square", { square: place.elsewhere }));
    else this.#tell(text === "" ? say("in-season.outside") : say("in-season.not-a-place", { text }));
  }

  async #take(square: string | undefined): Promise<void> {
    this.#square = square;
    keepSquare(square);
    await this.#show();
  }

  async #show(): Promise<void> {
    if (this.#file === undefined) return;
    const round =
      this.#square === undefined ? undefined : await this.#places.round(this.#square).catch(() => undefined);
    this.#fill(this.#file, round);
    this.#tell("");
  }

  #fill(file: SeasonFile, round: RoundSquare | undefined): void {
    const { heading, note, body, lastHead, section, say } = this.#page;
    const third = this.#third;
    const language = document.documentElement.lang;
    const taxa = inSeason(file, third, round?.met, this.#most);
    // On the home page the year's seasons tell more than an empty list.
    if (taxa.length === 0 && this.#page.form === null) return;
    const top = section.dataset["top"] ?? "/";
    const rows = taxa.map((taxon) => {
      const near = round === undefined ? undefined : nearWords(round.nearby.get(taxon.slug), say);
      const words = near ?? saidSeason(taxon.season, say, language);
      return seasonRow(taxon, { third, words, isNear: near !== undefined, top });
    });
    body.replaceChildren(...rows);
    const isHere = round !== undefined;
    const values = { third: saidThird(third, say, language), square: this.#square ?? "" };
    heading.textContent = say(isHere ? "in-season.now-here" : "in-season.now", values);
    lastHead.textContent = say(isHere ? "in-season.near" : "in-season.eight");
    lastHead.className = isHere ? "season-near" : "season-words";
    note.textContent = noteOf(say, taxa.length, isHere, file.since);
  }

  #tell(text: string): void {
    const said = this.#page.section.querySelector("[role=status]");
    if (said !== null) said.textContent = text;
  }
}

/** How far a neighbourhood reaches, in kilometres. */
const NEAR_KM = 40;

function noteOf(say: Say, taxa: number, isHere: boolean, since: number | null): string {
  if (taxa === 0) return say("in-season.none");
  if (!isHere) return say("in-season.note-now");
  return since === null
    ? say("in-season.note-here-all", { km: NEAR_KM })
    : say("in-season.note-here", { km: NEAR_KM, year: String(since) });
}
