import type { MapSettings } from "../../publishing/map-folder.ts";
import type { MapWords } from "./map-words.ts";

/** A choice of what the map shows. */
export interface ViewChoice {
  readonly value: string;
  readonly words: string;
}

type Say = MapWords["say"];

/**
 * What the map can show: both periods, each of the two compared, and the visits; all dates and the visits where the
 * atlas compares nothing.
 *
 * @param settings periods, and the places of the compared ones
 * @param say the map's words
 * @example viewChoices({ periods: [{ label: "1990–2005" }, { label: "2006–2024" }], compared: [0, 1] }, say)[1] // { value: "0", words: "1990–2005" }
 */
export function viewChoices({ periods, compared }: Pick<MapSettings, "periods" | "compared">, say: Say): ViewChoice[] {
  const visits = { value: "visits", words: say("zoom.visits") };
  if (compared === null) return [{ value: "any", words: say("zoom.any-date") }, visits];
  const one = (place: number) => ({ value: String(place), words: periods[place]?.label ?? "" });
  return [{ value: "both", words: say("zoom.both-periods") }, ...compared.map(one), visits];
}

const STEPS = [
  ["out", "−", "zoom.out"],
  ["north", "zoom.north-letter", "zoom.north"],
  ["in", "+", "zoom.in"],
  ["west", "zoom.west-letter", "zoom.west"],
  ["whole", "zoom.whole", "zoom.whole-map"],
  ["east", "zoom.east-letter", "zoom.east"],
  ["south", "zoom.south-letter", "zoom.south"],
] as const;

function markup(say: Say): string {
  const buttons = STEPS.map(
    ([act, sign, words]) =>
      `<button type="button" data-do="${act}" aria-label="${say(words)}">${sign.startsWith("zoom.") ? say(sign) : sign}</button>`,
  ).join("");
  return `
<div class="zoom-settings">
  <label>${say("zoom.species")} <select data-taxon></select></label>
  <fieldset><legend>${say("zoom.show")}</legend></fieldset>
</div>
<div class="zoom-stage">
  <div class="zoom-canvas" data-canvas></div>
  <div class="zoom-buttons">${buttons}</div>
</div>
<div class="zoom-status" role="status" aria-live="polite"><p data-view>${say("zoom.drawing")}</p><p data-square></p></div>
<p class="zoom-page" hidden><a data-page></a></p>
<form class="zoom-find" data-find>
  <label>${say("zoom.square")} <input type="text" autocomplete="off" autocapitalize="characters" spellcheck="false" size="10" data-code></label>
  <button type="submit">${say("zoom.show-square")}</button>
</form>
<details data-list><summary>${say("zoom.list")}</summary><ul class="zoom-list"></ul></details>
<p class="note" id="zoom-help">${say("zoom.help")} </p>
<p class="zoom-last"><a data-link>${say("zoom.link")}</a> <button type="button" data-close>${say("zoom.close")}</button></p>`;
}

/**
 * The panel of the interactive map, not yet on the page: settings, stage, buttons, what is told, search and list.
 *
 * @param settings of the atlas's map
 * @param say the map's words
 * @param credit of the base map, copied to the panel's foot; null without one
 * @returns the panel, which can be given focus
 */
export function panelOf(settings: MapSettings, say: Say, credit: Element | null): HTMLElement {
  const panel = document.createElement("div");
  panel.className = "zoom-panel";
  panel.tabIndex = -1;
  panel.setAttribute("role", "region");
  panel.setAttribute("aria-label", say("zoom.region"));
  panel.innerHTML = markup(say);
  panel.querySelector("fieldset")?.append(...viewChoices(settings, say).map(choiceLabel));
  if (credit !== null) panel.querySelector("#zoom-help")?.append(credit.cloneNode(true));
  return panel;
}

function choiceLabel({ value, words }: ViewChoice): HTMLLabelElement {
  const input = Object.assign(document.createElement("input"), { type: "radio", name: "zoom-view", value });
  const label = document.createElement("label");
  label.append(input, ` ${words}`);
  return label;
}
