/** The find field: a name opens its species, a grid reference its square. The list of names is fetched on first use. */
import { hectadOfReference } from "./hectad-of-reference.ts";

interface Entry {
  readonly name: string;
  readonly slug: string;
}

const form = document.querySelector<HTMLFormElement>("form.find");
if (form !== null) start(form);

function start(form: HTMLFormElement): void {
  const field = form.querySelector("input");
  const list = form.querySelector("datalist");
  const said = document.querySelector("#found");
  const top = form.dataset["top"] ?? "/";
  if (field === null) return;
  let entries: Promise<Entry[]> | undefined;
  const names = () => (entries ??= fetch(`${top}find.json`).then((answer) => answer.json() as Promise<Entry[]>));
  const say = (text: string) => {
    if (said !== null) said.textContent = text;
  };
  field.addEventListener("focus", async () => {
    if (list === null || list.childElementCount > 0) return;
    list.append(...(await names()).map(({ name }) => Object.assign(document.createElement("option"), { value: name })));
  });
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    const text = field.value.trim();
    if (text === "") return;
    const wanted = folded(text);
    const known = await names().catch((): Entry[] => []);
    const found =
      known.find(({ name }) => folded(name) === wanted) ?? known.find(({ name }) => folded(name).includes(wanted));
    const hectad = hectadOfReference(text);
    if (hectad !== undefined) {
      const place = `${top}squares/${hectad.toLowerCase()}/`;
      if ((await fetch(place, { method: "HEAD" })).ok) return location.assign(place);
      if (found === undefined) return say(`No page for ${hectad}: the square has no land and no record.`);
    }
    if (found !== undefined) return location.assign(`${top}species/${found.slug}/`);
    say(`Nothing found for “${text}”. Try part of a name, or a reference such as ${field.dataset["example"] ?? ""}.`);
  });
}

/** Small letters without accents. */
function folded(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
}
