import { statSync } from "node:fs";
import { Mistake } from "../mistake.ts";
import type { ContentFinding } from "./content-findings/finding.ts";
import { contentPath } from "./content-path.ts";
import { type ChecklistRow, MediaRow, type OutsideRow } from "./content-tables.ts";
import { readContent } from "./read-content.ts";
import type { Settings } from "./settings.ts";
import { parseTable } from "./table-file.ts";

const FILE = "media.csv";
/** The folder its files lie in, below the scheme's. */
export const MEDIA_FOLDER = "media";
const KINDS = ["photograph", "drawing", "clip"];

/** Pictures that can be shown, and what the others lack. */
export interface ReadMedia {
  media: MediaRow[];
  mediaFindings: ContentFinding[];
}

/**
 * Reads `media.csv`; none where the scheme has no such file. A picture without its file, credit, licence or alternative
 * text, or of no taxon, is a finding and is left out.
 *
 * @throws {Mistake} on a column that is missing
 */
export function readMedia(
  folder: string,
  { castes }: Settings,
  taxa: readonly ChecklistRow[],
  outside: readonly OutsideRow[],
): ReadMedia {
  const [media, mediaFindings]: [MediaRow[], ContentFinding[]] = [[], []];
  if (contentPath(folder, FILE) === undefined) return { media, mediaFindings };
  const known = new Set([...taxa, ...outside].map(({ taxonID }) => taxonID));
  const ids = new Set(castes.map(({ id }) => id));
  for (const row of parseTable(readContent(folder, FILE), FILE, MediaRow)) {
    const wrong = wrongWith(row, folder, known, ids);
    if (wrong === undefined) media.push(row);
    else mediaFindings.push({ file: FILE, row: row.row, ...wrong });
  }
  return { media, mediaFindings };
}

type Wrong = Omit<ContentFinding, "file" | "row">;

function wrongWith(
  row: MediaRow,
  folder: string,
  taxa: ReadonlySet<string>,
  castes: ReadonlySet<string>,
): Wrong | undefined {
  const wrong = (check: string, field: string, value: string, found: string, wayOut: string): Wrong => ({
    check,
    field,
    value,
    found: `${found}; the picture is left out`,
    wayOut,
  });
  for (const [field, wayOut] of [
    ["credit", "name its maker as the maker wishes, or the scheme"],
    ["licence", "give the SPDX identifier, such as CC-BY-4.0"],
    ["alt", "say what it shows, for who does not see it"],
  ] as const)
    if (row[field] === "") return wrong("media_incomplete", field, row.file, `has no ${field}`, wayOut);
  if (!/^[A-Za-z0-9][A-Za-z0-9.+-]*$/.test(row.licence))
    return wrong("media_incomplete", "licence", row.licence, "is no SPDX identifier", "write one such as CC-BY-4.0");
  if (!KINDS.includes(row.kind))
    return wrong("media_kind", "kind", row.kind, "is no kind of picture", `write ${KINDS.join(", ")}`);
  if (!taxa.has(row.taxonID))
    return wrong("media_taxon", "taxonID", row.taxonID, "is neither in checklist.csv nor in outside.csv", "correct it");
  const stray = row.castes.find((caste) => !castes.has(caste));
  if (stray !== undefined)
    return wrong("media_caste", "castes", stray, "is no caste of atlas.yaml", `write one of ${[...castes].join(", ")}`);
  return isThere(folder, row.file)
    ? undefined
    : wrong("media_missing", "file", row.file, `is not in ${MEDIA_FOLDER}`, "add the file, or correct its name");
}

/** A file that leads out of the folder of pictures, where letters and rulings lie, is as good as none; so is a folder. */
function isThere(folder: string, file: string): boolean {
  try {
    if (file === "" || file.includes("\\") || file.split("/").includes("..")) return false;
    const path = contentPath(folder, `${MEDIA_FOLDER}/${file}`);
    return path !== undefined && statSync(path).isFile();
  } catch (error) {
    if (error instanceof Mistake) return false;
    throw error;
  }
}
