/**
 * What the published tables say in English words: why a figure is not given, why a record fills no square. A page of
 * another language knows such a text by the English message here (`words/published-text.ts`), word for word.
 */
export default {
  "reason.comparable":
    "{n, plural, one {# comparable square} other {# comparable squares}}; {needed, number} are needed",
  "reason.no-square": "no square in either period",
  "reason.newcomer": "it is a newcomer: no square in the earlier period",
  "reason.no-comparable": "no comparable squares",
  "reason.not-earlier": "not recorded in the earlier period in any comparable square",
  "reason.not-earlier-in-part": "no square in the earlier period from this part of the records",
  "reason.no-hectad-in-both": "no 10 km square has records of it in both periods",
  "reason.tetrad-share":
    "only {from, number} % and {to, number} % of its records of the two periods in the same 10 km squares are good to 2 km; {needed, number} % of each are needed",
  "reason.withheld": "its places are withheld",
  "reason.some-withheld": "some of its places are withheld",
  "reason.shown-at": "its records are shown at {level}",
  "reason.some-shown-at": "some of its records are shown at {level}",
  "reason.of-no-list": "its records are shown coarser than they are known, and are part of no list here",
  "reason.lists-not-complete":
    "its records are shown coarser than they are known, so that its lists are not complete here",
  "reason.own-members": "a group is not set against its own members",
  "reason.group-too-small": "group too small: {n, plural, one {# taxon} other {# taxa}}, {needed, number} are needed",
  "reason.group-too-small-earlier":
    "group too small: {n, plural, one {# taxon} other {# taxa}} with {squares, number} squares or more in the earlier period, {needed, number} are needed",
  "reason.none-in-both": "no square in the earlier period among those recorded in both",
  "reason.few-earlier":
    "{n, plural, one {# square} other {# squares}} in the earlier period, {needed, number} are needed",
  "reason.equally-common": "all taxa of the group are equally common",
  "reason.few-benchmarks": "too few benchmark taxa: {mean, number} a square in the mean, {needed, number} are needed",
  "reason.few-at-equal-effort":
    "too few taxa with squares enough at equal effort: {n, number}, {needed, number} are needed",
  "reason.squares-at-equal-effort":
    "{n, plural, one {# square} other {# squares}} at equal effort in the two periods together, {needed, number} are needed",
  "reason.none-at-equal-effort-earlier": "no square at equal effort in the earlier period",
  "reason.none-at-equal-effort-later": "no square at equal effort in the later period",
  "reason.in-every-square": "recorded in every square compared",
  "reason.separated": "squares where it was found at some visits and not at others are too few to compare",
  "reason.lists-alike": "its lists differ too little to compare",
  "reason.one-square": "what its lists tell hangs on one square",
  "reason.no-lists": "it has no lists to compare",
  "reason.no-complete-lists": "no lists declared complete in {years}",
  "reason.few-complete-lists":
    "{n, plural, one {# complete list} other {# complete lists}} in {years} where it was ever recorded; {needed, number} are needed",
  "reason.few-lists-name-it":
    "{n, plural, one {# complete list names} other {# complete lists name}} it; {needed, number} are needed",
  "reason.few-squares-with-lists":
    "{n, plural, one {# square} other {# squares}} with complete lists in both periods; {needed, number} are needed",
  "reason.no-list-names-it":
    "none of the {n, plural, one {# complete list} other {# complete lists}} in {years} names it",
  "reason.years-until": "the years until {year}",
  "reason.few-records":
    "{n, plural, one {# record} other {# records}} dated to the day, where {needed, number} are needed",
  "reason.few-visits":
    "{n, plural, one {# visit} other {# visits}} dated to the day, where {needed, number} are needed",
  "reason.little-visited":
    "{n, number} of {all, number} visits fall in thirds of a month in which fewer than {needed, number} visits were made to anything of the group",
  "reason.round-the-year": "it is recorded on both sides of the day the year begins with (setting season.year_starts)",
  "reason.few-years":
    "{n, plural, one {# year} other {# years}} with {visits, number} visits or more, where {needed, number} are needed",
  "reason.without-latitude": "{n, number} of {all, number} visits have no 10 km square to tell their latitude",
  "reason.not-all-season":
    "even in the last {years, number} years {percent, number} % of its visits fall in thirds of a month that were visited fewer than {visits, number} times in some of them",
  "reason.entangled": "latitude, territory or caste changed with the years, and cannot be told from them",
  "reason.no-end": "its interval has no end",
  "reason.without-caste": "{n, number} of {all, number} visits state no caste, and castes are about at different times",
  "reason.seldom-with-it": "stated too seldom with it: {n, number}, where {needed, number} are needed",
  "reason.seldom-in-all": "stated too seldom in all: {n, number}, where {needed, number} are needed",
  "reason.one-hectad": "all of it was stated in one 10 km square",
  "reason.visits-of-square": "{n, plural, one {# visit} other {# visits}}; {needed, number} are needed",
  "reason.not-established": "no established record",
  "reason.tetrads-not-shown": "its 2 km squares are not shown on purpose",
  "reason.no-tetrad": "no record is good enough to fill a 2 km square",
  "reason.no-hectad": "no record is good enough to fill a 10 km square",
  "reason.too-far-apart": "its squares lie too far apart for one convex polygon",
  "reason.named-square": "named a square of {size}",
  "reason.outside-grid": "outside the grid",
  "reason.too-imprecise": "too imprecise: its circle reaches into other squares",
  "reason.place-withheld": "place withheld",
  "reason.coarsened": "shown at {level}",
  "reason.called-changed": "{percent, number} % of unchanged species were called changed where {how}",
  "reason.held-truth": "{percent, number} % of its 95 % intervals held the truth where {how}",
  "reason.how-nothing": "nothing changes",
  "reason.how-doubles": "effort doubles",
  "reason.how-doubles-and-moves": "effort doubles and moves, in place and season",
  "reason.how-north": "effort moves north and uphill",
  "reason.how-earlier": "effort moves to two weeks earlier in the year",
  "reason.how-species": "species change, effort does not",
  "reason.how-species-and-effort": "species change, effort doubles and moves",
  "reason.how-demonstration": "the demonstration, in which no species changes",
  "reason.truth-made": "Invented groups of {species, number} species, {seeds}; Node {node}, DuckDB {engine}.",
  "reason.truth-made-demonstration":
    "Invented groups of {species, number} species, {seeds}, and of the demonstration with no change of species, {more}; Node {node}, DuckDB {engine}.",
  "reason.seed": "seed {seed}",
  "reason.seeds": "seeds {from} to {to}",
  "reason.grid-british": "British National Grid",
  "reason.grid-channel-islands": "Channel Islands grid",
  "reason.grid-irish": "Irish Grid",
  "reason.grid-laea": "European reference grid (ETRS89-LAEA)",
  "reason.grid-mgrs": "Military Grid Reference System (UTM)",
  "reason.not-stated": "not stated",
} as const;
