/** Starts the list of what is in season; see `season-here.ts`. */
import { pageWords } from "../../words/client.ts";
import { SeasonHere } from "./season-here.ts";

const section = document.querySelector<HTMLElement>(".in-season");
const [heading, note, body, lastHead] = ["h2", "[data-note]", "tbody", "thead th:last-child"].map((selector) =>
  section?.querySelector<HTMLElement>(selector),
);
if (section && heading && note && body && lastHead)
  new SeasonHere({ section, heading, note, body, lastHead, form: section.querySelector("form"), say: pageWords() })
    .start()
    .catch(() => undefined); // The list stays as it came.
