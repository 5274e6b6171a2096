import type { Scheme } from "../../scheme/scheme.ts";
import type { ToldMethod } from "./statement.ts";

/** Local frequencies, as the methods page tells them. */
export function localFrequenciesMethod({ settings }: Scheme): ToldMethod {
  const own = settings.change.local_frequency;
  return {
    does: `Around each 10 km square lie the ${own.nearest} nearest; the ${own.most_similar} most alike in their species are its neighbourhood, and the frequencies <i>f</i> of species there, raised to those of a well recorded neighbourhood, <i>g</i>, say what to expect of the square. In each square and third of the season, the visits of the two periods are first brought to the same number: from the period with more, the chance that as few had found the species is taken. What effort still differs is a rate <i>e</i> for each square and period, such that the chances of its species add up to those found; it allows for the time of year of the records. The time factor <i>x</i> of a species is what its finds of a period are to what effort and neighbourhood lead to expect.`,
    formulas: [
      `<i>g</i> = 1 − (1 − <i>f</i>)<sup><i>a</i></sup>, with <i>a</i> such that the mean of <i>g</i> weighted by <i>g</i> is ${own.standard_frequency}`,
      "chance of a find = 1 − (1 − <i>g</i>)<sup><i>e x</i></sup>, with <i>x</i> such that the chances add up to the squares in which it would be found",
      "change = 100 (<i>x</i><sub>later</sub> / <i>x</i><sub>earlier</sub> / mean of the group − 1) %",
    ],
    tells:
      "whether a species is found more or less often than the group and its neighbourhood lead to expect, at equal effort: more or fewer squares than expected from the group as a whole.",
    tellsNot:
      "change as such: what all species of the group share looks like effort and is taken off, and the species is measured against the mean. Nor that recorders’ liking for a species stayed the same. Squares visited in one period only say nothing.",
    speaks: `for groups of ${own.minimum_taxa} species or more, where the squares have at least ${own.minimum_benchmarks} common species as benchmarks in the mean, of a species found in ${own.minimum_squares} squares or more and in both periods.`,
    few: `with few species there are few benchmarks, the commonest up to a rank of ${own.benchmark_share} of those expected: at eight species expected they are two, and a square’s effort hangs on luck. Small groups therefore get no figure.`,
    source:
      "M. O. Hill (2012), Local frequency as a key to interpreting species occurrence data when recording effort is not known, <i>Methods in Ecology and Evolution</i> 3: 195–205, of which the summary could be read, not the full text.",
    reading:
      "the paper’s summary could be read, not its full text. Neighbourhoods by nearness and likeness, the raised frequencies, benchmarks and time factors are the paper’s; how neighbours are weighted by their ranks is our reading. In the paper effort is the share of benchmarks found. That called changes where effort doubled and no species changed, so effort here is ours: visits brought to the same number, what remains told by all species, the time of year allowed for, the mean of the group taken off. The interval is ours too: by what each square adds to both periods together.",
  };
}
