import { say } from "../../words/say.ts";
import type { Sentence } from "../text/sentences.ts";
import { small } from "../text/words.ts";
import type { Counted } from "./large-map.ts";

/** Of the squares of a place, what its sentence needs. */
type Told = Pick<Counted, "time" | "tetrads" | "isCoverKnown"> & {
  readonly squares: Pick<Counted["squares"], "counts" | "compared">;
};

/**
 * What the large map shows of one place at one time, in words with its counts.
 *
 * @param place its name
 * @param told what is counted there
 * @example saidOf("Ireland", told) // "Ireland, 1990–2005: recorded in **210** of 1,012 squares of 10 km. …"
 */
export function saidOf(place: string, { time, squares: { counts, compared }, tetrads, isCoverKnown }: Told): Sentence {
  const finer = tetrads === undefined ? "" : ` ${say("large-map.tetrads", { n: tetrads })}`;
  if (compared) {
    const apart = counts.since + counts.before + counts.other;
    const { total: all, both, new: newly, gone } = counts;
    return `${say("large-map.compared-says", { place, all, both, new: newly, gone, apart }).trim()}${finer}`;
  }
  const values = { place, time: small(time.label), all: counts.total, recorded: counts.both };
  const said = isCoverKnown
    ? say("large-map.period-says", { ...values, blank: counts.coveredBoth, open: counts.coveredNeither })
    : say("large-map.unknown-says", values);
  return `${said}${finer}`;
}
