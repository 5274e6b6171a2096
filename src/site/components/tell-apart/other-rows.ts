import { escapeHtml } from "../../words/escape-html.ts";
import type { Column, Comparison } from "./comparison.ts";
import { listed, type Wording } from "./comparison-words.ts";
import { lowered } from "./html.ts";
import { schemeText } from "./scheme-text.ts";
import { recordsOf, seasonOf } from "./season-html.ts";

/** A row of what is known beside the look: its name, and a cell a column; empty where nothing is known. */
interface OtherRow {
  readonly name: string;
  readonly cells: readonly string[];
  /** Sentences, for which a column of a phone is too narrow. */
  readonly long?: true;
}

/** Rows of what is known beside the look: size, season, habitat, what a record needs. They are hints and carry no bar. */
export function otherRows(comparison: Comparison, wording: Wording, before: string): string {
  return rowsOf(comparison, wording)
    .map(({ name, cells, long }) => {
      const values = cells.map((cell) => `<td>${cell || "–"}</td>`).join("");
      return `<tr class="hint${long ? " long" : ""}">${before}<th scope="row">${name}</th>${values}</tr>`;
    })
    .join("");
}

/** The rows of sentences once more as a list; a phone shows it in their place where three or four are compared. */
export function longValues(comparison: Comparison, wording: Wording): string {
  const items = rowsOf(comparison, wording)
    .filter(({ long }) => long)
    .map(({ name, cells }) => {
      const values = comparison.columns.map(({ taxon }, index) =>
        cells[index] ? `<dd><b>${escapeHtml(taxon.short)}</b> ${cells[index]}</dd>` : "",
      );
      return `<div><dt>${name}</dt>${values.join("")}</div>`;
    });
  return items.length === 0 ? "" : `<dl class="long-values">${items.join("")}</dl>`;
}

function rowsOf({ columns }: Comparison, wording: Wording): OtherRow[] {
  const { says, tag } = wording;
  const largest = Math.max(0, ...columns.flatMap((column) => sizesOf(column).map(({ mm }) => mm[1])));
  const rows: OtherRow[] = [
    { name: says("apart.size"), cells: columns.map((column) => sizeCell(column, largest, wording)) },
    { name: says("apart.season"), cells: columns.map((column) => seasonCell(column, tag)) },
    { name: says("apart.habitat"), cells: columns.map((column) => habitatCell(column, wording)), long: true },
    { name: says("apart.needs"), cells: columns.map((column) => needsCell(column, wording)), long: true },
  ];
  return rows.filter(({ cells }) => cells.some(Boolean));
}

function habitatCell({ taxon: { habitats } }: Column, wording: Wording): string {
  return habitats.length === 0 ? "" : schemeText(listed(habitats.map(lowered), wording), wording);
}

function needsCell({ taxon }: Column, wording: Wording): string {
  return taxon.outside ? wording.says("apart.no-record") : schemeText(taxon.evidence, wording);
}

/** Sizes of the castes that are compared; those of all where a taxon tells none apart. */
function sizesOf({ taxon, castes }: Column): Column["taxon"]["sizes"] {
  return taxon.sizes.filter(({ caste }) => caste === "" || castes.length === 0 || castes.includes(caste));
}

/** One scale for all columns: the largest is as wide as its cell. */
function sizeCell(column: Column, largest: number, { says, labels }: Wording): string {
  const sizes = sizesOf(column);
  return sizes
    .map(({ caste, mm: [from, to] }) => {
      const [start, end] = [from, to].map((length) => Math.round((length / largest) * 100));
      const bar = `<svg class="size-bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true"><path class="all" d="M0 4H${start}"/><path class="range" d="M${start} 4H${end}"/></svg>`;
      const name =
        caste === "" || sizes.length === 1 ? "" : `<span class="of">${escapeHtml(labels.get(caste) ?? caste)}</span> `;
      return `${bar}${name}${says("apart.millimetres", { from, to })}`;
    })
    .join("<br>");
}

function seasonCell({ taxon, castes }: Column, tag: string): string {
  const found = seasonOf(recordsOf(taxon, castes), tag);
  return found === undefined ? "" : `${found.svg}${escapeHtml(found.words)}`;
}
