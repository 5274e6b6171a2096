import { readdirSync, readFileSync } from "node:fs";
import Papa from "papaparse";
import { parse } from "yaml";

const root = new URL("../../content/", import.meta.url);

/** One row of the demonstration's checklist, cells as text. */
export interface TaxonRow {
  taxonID: string;
  scientificName: string;
  taxonRank: string;
  subgenus: string;
  within: string;
  synonyms: string;
  vernacularNames: string;
  castes: string;
  firstSeen: string;
  notes: string;
}

/** One row of its characters, cells as text. */
export interface CharacterCells {
  taxonID: string;
  castes: string;
  form: string;
  part: string;
  state: string;
  note: string;
  reliability: string;
  evidence: string;
}

/** One account: its front matter and its prose. */
export interface AccountText {
  slug: string;
  front: {
    taxonID: string;
    lead: string;
    evidence: string;
    sizes: { caste: string; mm: [number, number]; note: string }[];
    look_alikes: { taxonID?: string; outside?: string; difference: string }[];
  };
  prose: string;
}

/** The text of one file of the demonstration. */
export function textOf(path: string): string {
  return readFileSync(new URL(path, root), "utf8");
}

/** The rows of one of its tables; throws where a row has more or fewer cells than the header. */
export function rowsOf<Row>(path: string): Row[] {
  const { data, errors } = Papa.parse<Row>(textOf(path), { header: true, skipEmptyLines: true });
  if (errors.length > 0) throw new Error(`${path}: ${JSON.stringify(errors[0])}`);
  return data;
}

/** Front matter and prose of a Markdown file. */
export function frontAndProse(path: string): { front: unknown; prose: string } {
  const [, front, prose] = textOf(path).match(/^---\n([\s\S]*?)\n---\n([\s\S]*)$/) ?? [];
  if (front === undefined || prose === undefined) throw new Error(`${path} has no front matter`);
  return { front: parse(front), prose };
}

/** The names of the Markdown files of a folder, without their ending. */
export function slugsIn(folder: string): string[] {
  const names = readdirSync(new URL(folder, root)).map((name) => name.replace(/\.md$/, ""));
  return names.filter((name) => !name.includes("."));
}

/** All accounts. */
export function accounts(): AccountText[] {
  return slugsIn("species/").map((slug) => {
    const { front, prose } = frontAndProse(`species/${slug}.md`);
    return { slug, front: front as AccountText["front"], prose };
  });
}

/** The values of a cell that parts them with a bar. */
export function list(cell: string): string[] {
  return cell
    .split("|")
    .map((part) => part.trim())
    .filter(Boolean);
}
