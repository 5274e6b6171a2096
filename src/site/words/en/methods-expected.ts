/** Words of the methods page on what is expected in squares, and on squares that want a visit. */
export default {
  "methods.section-expected-species": "Expected species",
  "methods.expected-what":
    "A species that nobody recorded in a square in the latest period is expected there when covered squares around it have it. That is a reason to look, and no prediction that it is there: it tells of squares like those around, and knows neither habitat nor altitude.",
  "methods.expected-around":
    "The squares around are those whose centres lie within {km} km of its own, on any grid, by great-circle distance; weight falls in a straight line to nothing at {km} km. A square counts for a species when it is covered for it by records of others, and has it by an established record of the latest period. Nothing is expected with fewer than {least} such squares, or in a square with land in fewer than {tetrads} of its 25 tetrads. Groups stand only where none of their members could be found.",
  "methods.expected-formula":
    "<formula>ψ = (weight of squares with it + 40 × share of all covered squares with it) / (weight of squares + 40)</formula><formula>chance = ψ(1 − <i>p</i>)<sup><i>K</i></sup> / (1 − ψ + ψ(1 − <i>p</i>)<sup><i>K</i></sup>)</formula><p><i>K</i> is the number of everyday visits to the square in the latest period, none of which recorded it; <i>p</i> is the share of the everyday visits to squares around with it that did, drawn towards that of the atlas by a prior worth {visits, plural, one {# visit} other {# visits}}.</p>",
  "methods.expected-gain":
    "<formula>gain = Σ chance × (1 − (1 − <i>p</i>)<sup>{further}</sup>)</formula><p>Squares that want a visit are ranked by that sum over their expected species: what {further, plural, one {# further visit} other {# further visits}} could add to the list of the latest period. Best is the third of the month in which one visit would add most, from each species’ season in the whole atlas.</p>",
  "methods.expected-held-out":
    "Tried on the demonstration’s invented records: those since 2006 of a random tenth of its covered squares were hidden, and the chances set beside what had been recorded. Of {all, number} chances {foretold, number} should have come true and {found, number} did; of those of 1 to 2 in 10, 10 %; of 4 to 5 in 10, 40 %; of 8 to 9 in 10, 86 %. With half of the visits hidden the rest was foretold to find {more, number} species more; records of every kind added {added, number}.",
  "methods.expected-few":
    "With few squares around the share of the atlas weighs as much as one of them. Visits are taken to find a species independently of each other and equally well everywhere, so that after many visits a chance is too low rather than too high.",
  "methods.expected-source":
    "Source: kernel-weighted share E. A. Nadaraya (1964), <i>Theory of Probability and its Applications</i> 9: 141–142, and G. S. Watson (1964), <i>Sankhyā</i> A 26: 359–372; presence after visits that did not find it D. I. MacKenzie and others (2002), <i>Ecology</i> 83: 2248–2255. Our reading: the two priors, each worth one square that has just been covered, and the limits (common practice). Everything is told from the copy in which sensitive records are shown coarser.",
} as const;
