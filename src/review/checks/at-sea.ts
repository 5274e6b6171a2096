import { addFindings, type Check, type CheckContext } from "../check.ts";
import { sqlWith } from "../sql-with.ts";

/** Points known to half a 1 km square or worse may have been in the next square. */
const COARSE_M = 500;

/** A place in a square without land. */
export const atSea: Check = {
  name: "at_sea",
  severity: "ask",
  asks: "Has the finest square the place supports no land in the scheme's list of land squares? Without such a list nothing is asked; the drawn coast is never used.",
  find,
};

async function find({ database, scheme: { landSquares } }: CheckContext): Promise<void> {
  if (landSquares === null) return;
  const filler = await database.fill("land_hectads", { grid: "text", hectad: "text", letters: "text" });
  filler.add({
    grid: landSquares.map(({ grid }) => grid),
    hectad: landSquares.map(({ hectad }) => hectad),
    letters: landSquares.map(({ tetrads }) => tetrads),
  });
  filler.done();
  await addFindings(database, atSea, sqlWith(import.meta.url, "at-sea.sql", { coarse_m: COARSE_M }));
}
