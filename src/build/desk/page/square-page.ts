import type { TraceAnswer } from "../../../review/desk/answers.ts";
import { AT, ask } from "./ask.ts";
import { counted, element } from "./dom.ts";

/** Everything a published square rests on: per taxon and period the records in use, with what their files say. */
export async function squarePage(grid: string, code: string): Promise<HTMLElement> {
  const { taxa, left_off } = await ask<TraceAnswer>(`square/${grid}/${code}`);
  const records = taxa.flatMap(({ periods }) => periods.flatMap((period) => period.records)).length;
  return element(
    "main",
    { class: "page trace", id: "record" },
    element("p", { class: "small" }, element("a", { href: AT }, "Review desk")),
    element("h1", {}, code),
    element(
      "p",
      { class: "say" },
      records === 0
        ? "No record in use supports this square."
        : `${counted(records, "record")} in use, of ${counted(taxa.length, "taxon", "taxa")}.`,
    ),
    left_off > 0 && element("p", {}, `${counted(left_off, "more record")} are not listed here.`),
    element(
      "p",
      { class: "small" },
      "Private: this page quotes records, places and people as their files hold them. Sensitive records stand here in full.",
    ),
    ...taxa.flatMap(({ name, vernacular, periods }) => [
      element("h2", {}, element("i", {}, name), ` ${vernacular}`),
      ...periods.map(({ period, records: rows }) =>
        element(
          "details",
          {},
          element("summary", {}, `${period}: ${counted(rows.length, "record")}`),
          ...rows.map(({ key, source, row, record, cells }) =>
            element(
              "table",
              { class: "traced" },
              element("caption", {}, element("a", { href: `${AT}#record-${record}` }, key), ` · ${source}, row ${row}`),
              element(
                "tbody",
                {},
                ...cells.map(([field, text]) =>
                  element("tr", {}, element("th", { scope: "row" }, field), element("td", {}, text)),
                ),
              ),
            ),
          ),
        ),
      ),
    ]),
  );
}
