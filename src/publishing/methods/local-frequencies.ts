import type { Scheme } from "../../scheme/scheme.ts";
import { percent, type ToldMethod } from "./statement.ts";

/** Local frequencies, as the methods page tells them. */
export function localFrequenciesMethod({ settings }: Scheme): ToldMethod {
  const own = settings.change.local_frequency;
  return {
    does: `How often a species would be found in a square, were all recorded alike, is told by its neighbourhood: of the ${own.nearest} nearest 10 km squares the ${own.most_similar} most alike in their species. The frequencies <i>f</i> there are raised to those of a well recorded neighbourhood, <i>g</i>. Both periods are brought to as many visits in each square and third of the season, as if the others had been drawn out at random; what remains of effort <i>s</i> in a square is told by all its species, and the time of year of the records is allowed for. The time factor <i>x</i> of a species is what its finds are to what frequencies and effort lead to expect.`,
    formulas: [
      `<i>g</i> = 1 − (1 − <i>f</i>)<sup><i>a</i></sup>, with <i>a</i> such that the mean of <i>g</i> weighted by <i>g</i> is ${own.standard_frequency}`,
      "chance of a find = 1 − (1 − <i>g</i>)<sup><i>s x</i></sup>, with <i>x</i> such that the chances add up to the finds",
      "change = 100 (<i>x</i><sub>later</sub> / <i>x</i><sub>earlier</sub> / mean of the group − 1) %",
    ],
    tells:
      "whether a species is found in more or fewer squares than expected from the group as a whole, at equal visits.",
    tellsNot:
      "change as such: a change that all share looks like one of effort, and is taken off. Nor that recorders’ liking for a species stayed the same.",
    speaks: `for groups of ${own.minimum_taxa} species or more, where the squares have at least ${own.minimum_benchmarks} common species as benchmarks in the mean, of a species found in ${own.minimum_squares} squares or more and in both periods.`,
    few: `small groups get no figure: at eight species expected in a square, a share of ${percent(own.benchmark_share)} leaves two benchmarks, too few to tell effort by. The interval is made of what each square adds, and is wide where few squares carry it.`,
    source:
      "M. O. Hill (2012), Local frequency as a key to interpreting species occurrence data when recording effort is not known, <i>Methods in Ecology and Evolution</i> 3: 195–205, of which the summary could be read, not the full text.",
    reading:
      "neighbourhoods by nearness and likeness, raised frequencies and time factors are the paper’s. The paper’s effort, the share of benchmark species found, called too many unchanged species changed where effort doubled: equal visits by square and season, effort from all species, the allowance for the time of year, the group’s mean and the interval are ours.",
  };
}
