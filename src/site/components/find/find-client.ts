/** Starts the field that finds; see `find-field.ts`. */
import { sayFrom } from "../../words/client.ts";
import { FindField } from "./find-field.ts";

const form = document.querySelector<HTMLFormElement>("form.find");
const field = form?.querySelector("input");
const list = form?.querySelector<HTMLElement>("[role=listbox]");
const said = form?.parentElement?.querySelector<HTMLElement>(".found");
const words = JSON.parse(document.querySelector("#find-words")?.textContent ?? "{}") as Record<string, string>;
const say = sayFrom(words, document.documentElement.lang || "en-GB");
if (form && field && list && said)
  new FindField({
    form,
    field,
    list,
    said,
    results: document.querySelector("#find-results"),
    say,
  }).start();
