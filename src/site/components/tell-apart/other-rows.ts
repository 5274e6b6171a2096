import type { Column, Comparison } from "./comparison.ts";
import { listed, type Wording } from "./comparison-words.ts";
import { escapeHtml, lowered } from "./html.ts";
import { schemeText } from "./scheme-text.ts";
import { recordsOf, seasonOf } from "./season-html.ts";

/** Rows of what is known beside the look: size, season, habitat, what a record needs. They are hints and carry no bar. */
export function otherRows({ columns }: Comparison, wording: Wording, before: string): string {
  const { says, tag } = wording;
  const largest = Math.max(0, ...columns.flatMap((column) => sizesOf(column).map(({ mm }) => mm[1])));
  const rows: [name: string, cells: string[], long?: "long"][] = [
    [says("apart.size"), columns.map((column) => sizeCell(column, largest, wording))],
    [says("apart.season"), columns.map((column) => seasonCell(column, tag))],
    [
      says("apart.habitat"),
      columns.map(({ taxon }) =>
        taxon.habitats.length === 0 ? "" : schemeText(listed(taxon.habitats.map(lowered), wording), wording),
      ),
      "long",
    ],
    [
      says("apart.needs"),
      columns.map(({ taxon }) => (taxon.outside ? says("apart.no-record") : schemeText(taxon.evidence, wording))),
      "long",
    ],
  ];
  return rows
    .filter(([, cells]) => cells.some(Boolean))
    .map(
      ([name, cells, long]) =>
        `<tr class="hint${long === undefined ? "" : ` ${long}`}">${before}<th scope="row">${name}</th>${cells.map((cell, index) => `<td${long === undefined ? "" : ` data-of="${escapeHtml(columns[index]?.taxon.short ?? "")}"`}>${cell || "–"}</td>`).join("")}</tr>`,
    )
    .join("");
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
