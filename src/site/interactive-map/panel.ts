import type { MapSettings } from "../../publishing/map-folder.ts";

/** A choice of what the map shows. */
export interface PeriodChoice {
  readonly value: string;
  readonly words: string;
}

/**
 * The choices of period: both, then each of the two compared; none where the atlas compares nothing.
 *
 * @param settings periods, and the places of the compared ones
 * @example periodChoices({ periods: [{ label: "1990–2005" }, { label: "2006–2024" }], compared: [0, 1] })[1] // { value: "0", words: "1990–2005" }
 */
export function periodChoices({ periods, compared }: Pick<MapSettings, "periods" | "compared">): PeriodChoice[] {
  if (compared === null) return [];
  const one = (place: number) => ({ value: String(place), words: periods[place]?.label ?? "" });
  return [{ value: "both", words: "Both periods" }, ...compared.map(one)];
}

const PANEL = `
<div class="zoom-settings">
  <label>Species <select data-taxon></select></label>
  <fieldset><legend>Period</legend></fieldset>
</div>
<div class="zoom-stage">
  <div class="zoom-canvas" data-canvas></div>
  <div class="zoom-buttons">
    <button type="button" data-do="out" aria-label="Zoom out">−</button>
    <button type="button" data-do="north" aria-label="Move north">N</button>
    <button type="button" data-do="in" aria-label="Zoom in">+</button>
    <button type="button" data-do="west" aria-label="Move west">W</button>
    <button type="button" data-do="whole" aria-label="Show all: the whole map">all</button>
    <button type="button" data-do="east" aria-label="Move east">E</button>
    <button type="button" data-do="south" aria-label="Move south">S</button>
  </div>
</div>
<div class="zoom-status" role="status" aria-live="polite"><p data-view>Drawing the map …</p><p data-square></p></div>
<form class="zoom-find" data-find>
  <label>Square <input type="text" autocomplete="off" autocapitalize="characters" spellcheck="false" size="10" data-code></label>
  <button type="submit">Show</button>
</form>
<details data-list><summary>Squares in view, as a list</summary><ul class="zoom-list"></ul></details>
<p class="note" id="zoom-help">Press a square for its records. The wheel zooms while Ctrl (⌘ on a Mac) is held; two fingers move the map on a touch screen. By keyboard: arrows move the map, + and − zoom, Enter tells the square in the middle. </p>
<p><button type="button" data-close>Close this map</button></p>`;

/**
 * The panel of the interactive map, not yet on the page: settings, stage, buttons, what is told, search and list.
 *
 * @param settings of the atlas's map
 * @param credit of the base map, copied to the panel's foot; null without one
 * @returns the panel, which can be given focus
 */
export function panelOf(settings: MapSettings, credit: Element | null): HTMLElement {
  const panel = document.createElement("div");
  panel.className = "zoom-panel";
  panel.tabIndex = -1;
  panel.setAttribute("role", "region");
  panel.setAttribute("aria-label", "Map that zooms");
  panel.innerHTML = PANEL;
  const periods = panel.querySelector("fieldset");
  const choices = periodChoices(settings);
  if (choices.length === 0) periods?.remove();
  periods?.append(...choices.map(periodLabel));
  if (credit !== null) panel.querySelector("#zoom-help")?.append(credit.cloneNode(true));
  return panel;
}

function periodLabel({ value, words }: PeriodChoice): HTMLLabelElement {
  const input = Object.assign(document.createElement("input"), { type: "radio", name: "zoom-view", value });
  input.checked = value === "both";
  const label = document.createElement("label");
  label.append(input, ` ${words}`);
  return label;
}
