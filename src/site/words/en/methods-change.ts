/** Words of the methods page on the methods of change, one by one, and on how their lines are shown. */
export default {
  "methods.section-change": "Change",
  "methods.section-squares-compared": "Squares compared",
  "methods.section-local-frequencies": "Local frequencies",
  "methods.section-reporting-rate": "Reporting rate",
  "methods.section-change-relative-to-the-group": "Change relative to the group",
  "methods.section-what-it-hangs-on": "What it hangs on",
  "methods.section-through-time": "Through time",
  "methods.section-first-years": "First years",
  "methods.change":
    "Up to four methods tell change, each by itself, from records of established animals outside provisional years. They answer different questions: read them side by side. Where their intervals leave out no change on opposite sides they disagree, and the page says so; where a method has too little to go by it says that it is not applicable, and why.",
  "methods.change-limits":
    "No method sees what nobody recorded, and none is an assessment of risk. Figures relative to the group say more, or fewer, squares than expected from the group as a whole: where the whole group declines, they do not.",
  "methods.claim-kept": "It claims to correct for recording, which the <truth>known truth</truth> bears out.",
  "methods.claim-withdrawn":
    "It does <b>not</b> claim to correct for recording: where the <truth>truth is known</truth>, {reason}.",
  "methods.claim-rank":
    "It ranks the species of the group and claims no correction: at most one in twenty can stand out, whatever happens, as the <truth>known truth</truth> shows.",
  "methods.claim-untested": "Its correction for recording is untested, and nothing is claimed of it.",
  "methods.squares-does":
    "<p>Of the squares covered in both periods by visits that named others, those that hold the species in both periods (<i>b</i>), only in the later one (<i>n</i>, newly found) and only in the earlier one (<i>o</i>, not refound).</p>",
  "methods.squares-formulas":
    "<formula>net change = 100 (<i>n</i> − <i>o</i>) / (<i>b</i> + <i>o</i>) %</formula><formula>turnover = 100 (<i>n</i> + <i>o</i>) / (<i>b</i> + <i>n</i> + <i>o</i>) %</formula>",
  "methods.squares-tells":
    "<p><b>It tells</b> in how many more or fewer of the comparable squares the species was found. A square recorded in one period and too little visited in the other cannot be compared; it says where the species is, not how it has changed.</p>",
  "methods.squares-tells-not":
    "<p><b>It does not tell</b> that the species changed so: it is <b>not corrected for recording</b>. More visits to the same squares find more of everything. Part of the turnover is always a species that was there and not found.</p>",
  "methods.squares-speaks":
    "<p><b>It speaks</b> from {squares} comparable squares. It is told under two rules: a square is covered by {least} visits, or by {more}. At 2 km it speaks only where at least {percent} % of the species’ records of each period are good to 2 km, in the 10 km squares that have some in both, since better references look like new squares.</p>",
  "methods.squares-few":
    "<p><b>With few data:</b> the interval is exact: of the squares that changed, the share newly found has its 95 % interval, carried over to squares. It is never narrower than 95 %, often wider, and leaves out no change exactly where the exact test of McNemar does. It allows for chance among the squares, not for recording.</p>",
  "methods.squares-source":
    "<p><b>Source:</b> C. J. Clopper and E. S. Pearson (1934), <i>Biometrika</i> 26: 404–413, for the interval.</p>",
  "methods.squares-reading":
    "<p><b>Our reading:</b> that the interval is conditional on the number of squares that changed, and that only records of established animals outside provisional years count.</p>",
  "methods.local-does":
    "<p>How often a species would be found in a square, were all recorded alike, is told by its neighbourhood: of the {nearest} nearest 10 km squares the {similar} most alike in their species. The frequencies <i>f</i> there are raised to those of a well recorded neighbourhood, <i>g</i>. Both periods are brought to as many visits in each square and third of the season, as if the others had been drawn out at random; what remains of effort <i>s</i> in a square is told by all its species, and the time of year of the records is allowed for. The time factor <i>x</i> of a species is what its finds are to what frequencies and effort lead to expect.</p>",
  "methods.local-formulas":
    "<formula><i>g</i> = 1 − (1 − <i>f</i>)<sup><i>a</i></sup>, with <i>a</i> such that the mean of <i>g</i> weighted by <i>g</i> is {frequency, number}</formula><formula>chance of a find = 1 − (1 − <i>g</i>)<sup><i>s x</i></sup>, with <i>x</i> such that the chances add up to the finds</formula><formula>change = 100 (<i>x</i><sub>later</sub> / <i>x</i><sub>earlier</sub> / mean of the group − 1) %</formula>",
  "methods.local-tells":
    "<p><b>It tells</b> whether a species is found in more or fewer squares than expected from the group as a whole, at equal visits. {claim}</p>",
  "methods.local-tells-not":
    "<p><b>It does not tell</b> change as such: a change that all share looks like one of effort, and is taken off. Nor that recorders’ liking for a species stayed the same.</p>",
  "methods.local-speaks":
    "<p><b>It speaks</b> for groups of {taxa} species or more, where the squares have at least {benchmarks} common species as benchmarks in the mean, of a species found in {squares} squares or more and in both periods.</p>",
  "methods.local-few":
    "<p><b>With few data:</b> small groups get no figure: at eight species expected in a square, a share of {percent} % leaves two benchmarks, too few to tell effort by. The interval is made of what each square adds, and is wide where few squares carry it.</p>",
  "methods.local-source":
    "<p><b>Source:</b> M. O. Hill (2012), Local frequency as a key to interpreting species occurrence data when recording effort is not known, <i>Methods in Ecology and Evolution</i> 3: 195–205, of which the summary could be read, not the full text.</p>",
  "methods.local-reading":
    "<p><b>Our reading:</b> neighbourhoods by nearness and likeness, raised frequencies and time factors are the paper’s. The paper’s effort, the share of benchmark species found, called too many unchanged species changed where effort doubled: equal visits by square and season, effort from all species, the allowance for the time of year, the group’s mean and the interval are ours.</p>",
  "methods.rate-does":
    "<p>The share of complete lists that name the species, at equal length of list, season and place. Only lists declared complete enter, for only they tell what was not seen; surveys for one species and museum lots do not. Squares are compared with themselves: those with lists in both periods.</p>",
  "methods.rate-formulas":
    "<formula>log odds of being named = square + period + log (other species on the list) + two waves of the year</formula><formula>change = 100 (rate<sub>later</sub> / rate<sub>earlier</sub> − 1) %, each the rate that all compared lists would have, were they of that period</formula>",
  "methods.rate-tells":
    "<p><b>It tells</b> whether the species is named on more or fewer lists of the same kind. {claim}</p>",
  "methods.rate-tells-not":
    "<p><b>It does not tell</b> that it is in more squares, or more numerous: a share of visits is no count. Length stands for what a visit sees: where most of a group grows commoner, lists grow longer for the same walk, and every rate at equal length falls by part of that.</p>",
  "methods.rate-speaks":
    "<p><b>It speaks</b> from {visits, number} complete lists in each period, {detections, number} of them that name it, and {squares, number} 10 km squares with lists in both periods.</p>",
  "methods.rate-few":
    "<p><b>With few data:</b> squares in which every list names it, or none, say nothing of change. The interval leaves out each square in turn, so that visits to one square do not pass for many; with few squares it is wide.</p>",
  "methods.rate-source":
    "<p><b>Source:</b> J. K. Szabo, P. A. Vesk, P. W. J. Baxter and H. P. Possingham (2010), Regional avian species declines estimated from volunteer-collected long-term data using List Length Analysis, <i>Ecological Applications</i> 20: 2157–2169.</p>",
  "methods.rate-reading":
    "<p><b>Our reading:</b> the paper’s model is a logistic one with the logarithm of the list’s length; that length counts the other species, the season’s two waves, squares, the rates and the interval are ours.</p>",
  "methods.relative-does":
    "<p>In each period, the share of the 10 km squares with a record of the group in both periods that hold each species. A line through the log odds of the later period against the earlier shows what the group as a whole leads to expect; the index of a species is its distance from the line, in standard deviations.</p>",
  "methods.relative-formulas":
    "<formula>log odds = log ((squares with it + ½) / (squares without it + ½))</formula><formula>index = (log odds<sub>later</sub> − line at log odds<sub>earlier</sub>) / standard deviation</formula>",
  "methods.relative-tells":
    "<p><b>It tells</b> whether a species fared better or worse than the group: more or fewer squares than expected from the group as a whole. More recording lifts all species, and so the line. {claim}</p>",
  "methods.relative-tells-not":
    "<p><b>It does not tell</b> change as such: where all decline, the middle of them has the index 0. The sign need not be that of the change in squares.</p>",
  "methods.relative-speaks":
    "<p><b>It speaks</b> for groups with {taxa} species or more that have {squares} squares or more in the earlier period; a species with fewer has no index.</p>",
  "methods.relative-few":
    "<p><b>With few data:</b> with few species the line is drawn by a handful of them. An index is called only where it lies beyond Student’s limit for a species left out of the scatter and beyond that of 95 in 100 species of the group: in a group that changes much few stand out.</p>",
  "methods.relative-source":
    "<p><b>Source:</b> M. G. Telfer, C. D. Preston and P. Rothery (2002), A general method for measuring relative change in range size from biological atlas data, <i>Biological Conservation</i> 107: 99–109.</p>",
  "methods.relative-reading":
    "<p><b>Our reading:</b> the full text could not be read. Squares of both periods, the line over all species, iterated weights and standardised distances are the paper’s by descriptions of it. Ours are the half added to the squares, the variance <i>a</i> + <i>b</i> / (<i>N p</i> (1 − <i>p</i>)) behind the weights, equal or binomial weights where that cannot be fitted, the standardising by leverage, and the interval.</p>",
  "methods.hangs-on":
    "Each method is run again with provisional years, without visits that named one species, without surveys for one species, without mass events, without specimens and literature, and with complete lists only. A bar marks where the line then points another way, loses its direction or can no longer be judged. Such a figure rests on one kind of record: quote it with that.",
  "methods.series":
    "Series by period and year come from the same methods, with the same minimums. Neighbouring figures share their squares, so that two intervals which overlap may still differ.{years, select, none {} other { Provisional years ({years}) are open and enter no trend.}}",
  "methods.first-years":
    "A species without a square in the earlier period has no change to tell, and no index of it. In its place stands a map of the years in which squares were first recorded; a first record may come long after a first arrival, and {visits, number} visits that named others are what makes a square without it count as covered.",
} as const;
