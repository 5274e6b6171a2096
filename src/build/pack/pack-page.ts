import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { escapeHtml } from "../../publishing/markdown.ts";
import { findingTitle } from "../../records/finding-titles.ts";
import type { CharacterRow } from "../../scheme/content-tables.ts";
import { IDENTIFICATIONS, RULINGS } from "../../scheme/decisions-file.ts";

/** One question of a pack, with what its record says. */
export interface PackQuestion {
  look_no: number;
  record_key: string;
  said_mark: string;
  check_name: string;
  message: string;
  way_out: string;
  said_name: string;
  said_date: string;
  said_place: string;
  said_kind: string;
  locality: string;
  remarks: string;
  recorded_by: string;
  taxon_id: string | null;
}

/** What a pack's page is made of. */
export interface Pack {
  /** Name of its files, without ending. */
  name: string;
  title: string;
  /** Of which records, in words. */
  selection: string;
  invented: boolean;
  questions: readonly PackQuestion[];
  /** What settles the identification of a taxon: rows of `characters.csv`. */
  characters: ReadonlyMap<string, readonly CharacterRow[]>;
  /** Names of the taxa, by their ids. */
  names: ReadonlyMap<string, string>;
}

const RULED = RULINGS.slice(0, 6);
const beside = (file: string) => readFileSync(fileURLToPath(new URL(file, import.meta.url)), "utf8");

/**
 * A review pack as one self-contained page: the questions, what settles them, and fields for the rulings, which it saves
 * as a CSV with the columns of a worklist. It asks nothing of any host.
 */
export function packPage(pack: Pack): string {
  const [style, script] = [beside("pack-style.css"), beside("pack-client.js")];
  const policy = `default-src 'none'; style-src '${hashOf(style)}'; script-src '${hashOf(script)}'; base-uri 'none'; form-action 'none'`;
  const records = new Set(pack.questions.map(({ record_key }) => record_key)).size;
  const looks = [...Map.groupBy(pack.questions, ({ look_no }) => look_no).values()];
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex">
<title>Review pack: ${escapeHtml(pack.selection)} — ${escapeHtml(pack.title)}</title>
<style>${style}</style>
</head>
<body data-pack="${escapeHtml(pack.name)}">
<main>
<h1>Review pack</h1>
<p>${escapeHtml(pack.title)}: ${escapeHtml(pack.selection)}. ${records} ${records === 1 ? "record" : "records"} to look at.</p>
${pack.invented ? "<p><strong>These records are invented, for demonstration.</strong></p>" : ""}
<p>Rule on as many as you like, save, and send the saved file back. “Cannot be decided” is an answer too. The page keeps what you enter on this device until you save.</p>
<p class="quiet">These are a scheme’s unpublished records, with places as they were given. Pass them to nobody, and delete them when you are done.</p>
<p class="who"><label>Who rules (initials or a role) <input id="who" autocomplete="off"></label></p>
${looks.map((questions) => lookSection(questions, pack)).join("\n")}
<div class="save"><button id="save" type="button">Save my rulings</button><p id="state" role="status"></p></div>
</main>
<script>${script}</script>
</body>
</html>
`;
}

function lookSection(questions: readonly PackQuestion[], { characters, names }: Pack): string {
  const [first] = questions;
  if (first === undefined) return "";
  const byTaxon = [...Map.groupBy(questions, ({ taxon_id }) => taxon_id ?? "")];
  const parts = byTaxon.map(([taxon, own]) => {
    const records = [...Map.groupBy(own, ({ record_key }) => record_key).values()];
    return `${settlesTable(names.get(taxon) ?? "", characters.get(taxon) ?? [])}${records.map(recordFields).join("\n")}`;
  });
  return `<section>\n<h2>${escapeHtml(sentence(findingTitle(first.check_name)))}</h2>\n${parts.join("\n")}\n</section>`;
}

function settlesTable(name: string, rows: readonly CharacterRow[]): string {
  const settling = rows.filter(({ reliability }) => reliability === "settles");
  if (settling.length === 0) return "";
  const lines = settling.map(({ castes, part, state, note, evidence }) => {
    const of = [part, ...castes].join(", ");
    return `<tr><th scope="row">${escapeHtml(of)}</th><td>${escapeHtml(note || state)}</td><td>${escapeHtml(evidence)}</td></tr>`;
  });
  return `<table><caption>What settles <i>${escapeHtml(name)}</i></caption><thead><tr><th scope="col">Part</th><th scope="col">State</th><th scope="col">Shown by</th></tr></thead><tbody>${lines.join("")}</tbody></table>\n`;
}

function recordFields(questions: readonly PackQuestion[]): string {
  const [record] = questions;
  if (record === undefined) return "";
  const { said_name, said_date, said_place, said_kind, locality, remarks, recorded_by } = record;
  const said = [said_name, said_date, said_place, locality, said_kind].filter(Boolean).join(", ");
  const more = [recorded_by && `Recorded by ${recorded_by}.`, remarks && `“${remarks}”`].filter(Boolean).join(" ");
  const asked = questions.map(
    ({ message, way_out }) =>
      `<p>${escapeHtml(sentence(message))}. <span class="quiet">To settle it: ${escapeHtml(way_out)}.</span></p>`,
  );
  return `<fieldset data-record="${escapeHtml(record.record_key)}" data-mark="${escapeHtml(record.said_mark)}">
<legend>${escapeHtml(said)}</legend>
${more === "" ? "" : `<p class="quiet">${escapeHtml(more)}</p>`}${asked.join("")}
<div class="fields">
${choice("ruling", "Ruling", RULED)}
<label>Name, or correction <input name="value" autocomplete="off"></label>
${choice("identification", "Identification", IDENTIFICATIONS.slice(1))}
<label>Part seen <input name="part_seen" autocomplete="off"></label>
<label>Why <input name="why" autocomplete="off"></label>
</div>
</fieldset>`;
}

function choice(name: string, label: string, values: readonly string[]): string {
  const options = ["", ...values].map((value) => `<option>${escapeHtml(value)}</option>`).join("");
  return `<label>${label} <select name="${name}">${options}</select></label>`;
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function hashOf(text: string): string {
  return `sha256-${createHash("sha256").update(text).digest("base64")}`;
}
