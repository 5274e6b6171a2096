import type { Scheme } from "../../scheme/scheme.ts";
import { percent, type ToldMethod } from "./statement.ts";

/** Local frequencies, as the methods page tells them. */
export function localFrequenciesMethod({ settings }: Scheme): ToldMethod {
  const own = settings.change.local_frequency;
  return {
    does: `How well a square was recorded in a period is told by the species that are common around it. Around each 10 km square lie the ${own.nearest} nearest; the ${own.most_similar} most alike in their species are its neighbourhood. The frequencies <i>f</i> of the species there are raised to those of a well recorded neighbourhood, <i>g</i>; the commonest, up to a rank of ${own.benchmark_share} of the species expected, are its benchmarks, and the share of them found in a period is the effort <i>s</i>. The time factor <i>x</i> of a species is what its finds of a period are to what effort and neighbourhood lead to expect.`,
    formulas: [
      `<i>g</i> = 1 − (1 − <i>f</i>)<sup><i>a</i></sup>, with <i>a</i> such that the mean of <i>g</i> weighted by <i>g</i> is ${own.standard_frequency}`,
      "chance of a find = 1 − (1 − <i>s g</i>)<sup><i>x</i></sup>, with <i>x</i> such that the chances add up to the squares in which it was found",
      "change = 100 (<i>x</i><sub>later</sub> / <i>x</i><sub>earlier</sub> − 1) %",
    ],
    tells:
      "whether a species is found more or less often than the common species of its neighbourhood lead to expect: more or fewer squares than expected from the group as a whole.",
    tellsNot:
      "change as such: where the benchmark species change together, the species is measured against them. Nor that recorders’ liking for a species stayed the same.",
    speaks: `for groups of ${own.minimum_taxa} species or more, where the squares have at least ${own.minimum_benchmarks} benchmark species in the mean, of a species found in ${own.minimum_squares} squares or more.`,
    few: `with few species there are few benchmarks, and effort jumps: at eight species expected, ${percent(own.benchmark_share)} leaves two benchmarks, and effort can only be none, half or all. Small groups therefore get no figure.`,
    source:
      "M. O. Hill (2012), Local frequency as a key to interpreting species occurrence data when recording effort is not known, <i>Methods in Ecology and Evolution</i> 3: 195–205.",
    reading:
      "the paper’s summary could be read, not its full text. Neighbourhoods by nearness and likeness, the raised frequencies, benchmarks and effort are the paper’s; how neighbours are weighted by their ranks, that squares without a benchmark found are left out, and the standard error are our readings.",
  };
}
