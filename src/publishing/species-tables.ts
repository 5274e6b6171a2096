import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Database } from "../engine/database.ts";
import { defused } from "../engine/defused.ts";
import { publishedTable } from "./published-tables.ts";
import type { TaxonNames } from "./taxon-names.ts";
import { type DownloadEntry, describeFile, fieldsOf } from "./write-tables.ts";

const NEWLINE = 0x0a;
const QUOTE = 0x22;

/**
 * Writes one CSV a taxon, `species/<slug>.csv`: its rows of the table of squares, byte for byte as they stand there.
 * Needs that table written. A taxon without records gets the header alone.
 *
 * @returns what the list of downloads says of each, in the order of the names
 */
export async function writeSpeciesTables(
  database: Database,
  names: ReadonlyMap<string, TaxonNames>,
  { folder, invented }: { folder: string; invented: boolean },
): Promise<DownloadEntry[]> {
  const table = publishedTable("taxon_squares");
  const [header, parts] = cutByTaxon(
    readFileSync(join(folder, `${table.name}.csv`)),
    await database.rows<{ taxon_id: string; rows: number }>(
      `SELECT taxon_id, count(*) AS rows FROM ${table.name} GROUP BY taxon_id ORDER BY ${defused("taxon_id")}`,
    ),
  );
  mkdirSync(join(folder, "species"), { recursive: true });
  return [...names.values()].map(({ taxon, slug, vernacularName }) => {
    const own = parts.get(taxon.taxonID) ?? { rows: 0, bytes: Buffer.alloc(0) };
    const path = `species/${slug}.csv`;
    writeFileSync(join(folder, path), Buffer.concat([header, own.bytes]));
    return describeFile(folder, path, {
      table: table.name,
      title: `Squares: ${vernacularName}`,
      format: "csv",
      rows: own.rows,
      fields: fieldsOf(table, invented),
    });
  });
}

/** Cuts a CSV that is sorted by taxon into its header and each taxon's rows; a line break between quotation marks is no end of a row. */
function cutByTaxon(
  csv: Buffer,
  counts: readonly { taxon_id: string; rows: number }[],
): [header: Buffer, parts: Map<string, { rows: number; bytes: Buffer }>] {
  let at = 0;
  const take = (rows: number): Buffer => {
    const begin = at;
    let quoted = false;
    for (let left = rows; left > 0 && at < csv.length; at += 1) {
      if (csv[at] === QUOTE) quoted = !quoted;
      else if (csv[at] === NEWLINE && !quoted) left -= 1;
    }
    return csv.subarray(begin, at);
  };
  const header = take(1);
  return [header, new Map(counts.map(({ taxon_id, rows }) => [taxon_id, { rows, bytes: take(rows) }]))];
}
