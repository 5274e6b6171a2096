import { areasBeyond } from "../areas.ts";
import type { Random } from "../random.ts";
import type { Row } from "../source.ts";
import { type Correction, type ErrorKind, hasColumn, put } from "./error-kind.ts";

/** Errors in the area a card states. */
export const areaErrors: readonly ErrorKind[] = [
  { kind: "wrong-area", cards: 0, share: 0.002, fits: hasColumn("Area"), spoil: otherArea },
];

/** The name of an area far away: a card of another drawer. */
function otherArea(row: Row, random: Random): Correction | undefined {
  if (row.cells["Area"] === "") {
    return undefined;
  }
  const far = areasBeyond(row.sighting, 40);
  return far.length === 0 ? undefined : put(row, "Area", random.pick(far));
}
