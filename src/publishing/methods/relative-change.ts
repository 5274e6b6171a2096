import type { Scheme } from "../../scheme/scheme.ts";
import type { ToldMethod } from "./statement.ts";

/** The relative change index, as the methods page tells it. */
export function relativeChangeMethod({ settings }: Scheme): ToldMethod {
  const own = settings.change.relative;
  return {
    does: "In each period, the share of the 10 km squares with a record of the group in both periods that hold each species. A line through the log odds of the later period against the earlier shows what the group as a whole leads to expect; the index of a species is its distance from the line, in standard deviations.",
    formulas: [
      "log odds = log ((squares with it + ½) / (squares without it + ½))",
      "index = (log odds<sub>later</sub> − line at log odds<sub>earlier</sub>) / standard deviation",
    ],
    tells:
      "whether a species fared better or worse than the group: more or fewer squares than expected from the group as a whole. More recording lifts all species, and so the line.",
    tellsNot:
      "change as such: where all decline, the middle of them has the index 0. The sign need not be that of the change in squares.",
    speaks: `for groups with ${own.minimum_taxa} species or more that have ${own.minimum_squares} squares or more in the earlier period; a species with fewer has no index.`,
    few: "with few species the line is drawn by a handful of them. An index is called only where it lies beyond Student’s limit for a species left out of the scatter and beyond that of 95 in 100 species of the group: in a group that changes much few stand out.",
    source:
      "M. G. Telfer, C. D. Preston and P. Rothery (2002), A general method for measuring relative change in range size from biological atlas data, <i>Biological Conservation</i> 107: 99–109.",
    reading:
      "the full text could not be read. Squares of both periods, the line over all species, iterated weights and standardised distances are the paper’s by descriptions of it. Ours are the half added to the squares, the variance <i>a</i> + <i>b</i> / (<i>N p</i> (1 − <i>p</i>)) behind the weights, equal or binomial weights where that cannot be fitted, the standardising by leverage, and the interval.",
  };
}
