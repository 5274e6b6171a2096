import type { Database } from "../engine/database.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { recorderKey } from "../scheme/suppressed-names.ts";

/** What a name is made of; a text with figures, @ or a slash is an address or a number. */
const NAME = /^[\p{L}\p{M}\s.,'’&()-]+$/u;

/**
 * Recorders of used records, to be thanked by name where the scheme has said so: in alphabetical order of surnames, each
 * once, without counts. Suppressed names are left out. Needs the views `records` and `record_texts`.
 *
 * @returns none unless `recorders.acknowledged` is set
 * @example await thankedRecorders(database, scheme) // => ["Zoë Quill", "A. Reed"]
 */
export async function thankedRecorders(
  database: Database,
  { settings, suppressed }: Pick<Scheme, "settings" | "suppressed">,
): Promise<string[]> {
  if (!settings.recorders.acknowledged) return [];
  const rows = await database.rows<{ written: string }>(
    `SELECT DISTINCT t."recordedBy" AS written FROM record_texts AS t JOIN records AS r USING (record_no)
     WHERE r.status = 'used' AND t."recordedBy" <> '' ORDER BY written`,
  );
  return namesToThank(rows.map(({ written }) => written)).filter((name) => !suppressed.isSuppressed(name));
}

/**
 * Names out of cells that may hold several, parted by | or ;.
 *
 * @param cells as records write them
 * @returns each name once, of several spellings one that is not all capitals, sorted by surname
 * @example namesToThank(["Zoë Quill | A. Reed", "Reed, A.", "a.reed@example.org"]) // => ["Zoë Quill", "A. Reed"]
 */
export function namesToThank(cells: readonly string[]): string[] {
  const names = cells
    .flatMap((cell) => cell.split(/[|;]/))
    .map((name) => name.trim().replaceAll(/\s+/g, " "))
    .filter((name) => NAME.test(name) && /\p{L}{2}/u.test(name));
  const byPerson = new Map<string, string>();
  const isMixed = (name: string) => /\p{Lu}/u.test(name) && /\p{Ll}/u.test(name);
  for (const name of [...names.filter(isMixed).sort(), ...names.toSorted()]) {
    const person = recorderKey(name).split(" ").sort().join(" ");
    if (!byPerson.has(person)) byPerson.set(person, name);
  }
  const { compare } = new Intl.Collator("en");
  return [...byPerson.values()].sort((one, other) => compare(surnameOf(one), surnameOf(other)) || compare(one, other));
}

function surnameOf(name: string): string {
  const [before = "", after] = name.split(",");
  return after === undefined ? (name.split(" ").at(-1) ?? name) : before;
}
