import type { Database } from "../engine/database.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { overdueReviews, SENSITIVE_FILE } from "../scheme/sensitive-list.ts";
import { counted } from "./counted.ts";

/** A 10 km square with at most so many land squares of 2 km gives away most of what it should hide. */
const FEW_TETRADS = 3;
const MOST_NAMED = 8;

/**
 * What the officer should know of the list of sensitive taxa: how many records are shown coarser, which entries are due
 * for review, and where 10 km hides little since most of the square is sea. For the log only.
 *
 * @returns one line each; none where the scheme lists nothing
 * @example await sensitiveNotes(database, scheme) // => ["sensitive.csv row 2: invented-distinguendus was to be looked at again by 2024-12-31"]
 */
export async function sensitiveNotes(
  database: Database,
  { sensitive, settings, landSquares }: Pick<Scheme, "sensitive" | "settings" | "landSquares">,
): Promise<string[]> {
  if (sensitive.length === 0) return [];
  const overdue = overdueReviews(sensitive, settings.edition.date).map(
    ({ row, taxonID, reviewDate }) =>
      `${SENSITIVE_FILE} row ${row}: ${taxonID} was to be looked at again by ${reviewDate}`,
  );
  const [counts] = await database.rows<{ records: number }>("SELECT count(*) AS records FROM generalised");
  const hidden = await database.rows<{ grid: string; square: string }>(
    "SELECT DISTINCT grid, square FROM generalised WHERE coarseness = 2 AND square IS NOT NULL ORDER BY grid, square",
  );
  const land = new Map((landSquares ?? []).map(({ grid, hectad, tetrads }) => [`${grid} ${hectad}`, tetrads.length]));
  const small = hidden.flatMap(({ grid, square }) =>
    (land.get(`${grid} ${square}`) ?? Infinity) <= FEW_TETRADS ? [square] : [],
  );
  const told =
    small.length === 0
      ? []
      : [
          `${counted(small.length, "square")} shown at 10 km ${small.length === 1 ? "has" : "have"} land in ${FEW_TETRADS} 2 km squares or fewer: ${small.slice(0, MOST_NAMED).join(", ")}${small.length > MOST_NAMED ? " …" : ""}`,
        ];
  return [`${counted(counts?.records ?? 0, "record")} shown coarser, by ${SENSITIVE_FILE}`, ...overdue, ...told];
}
