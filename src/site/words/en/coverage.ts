/** Words of the coverage page. */
export default {
  "coverage.title": "Coverage",
  "coverage.description": "How often each 10 km square was visited for {group}.",
  "coverage.lead":
    "A blank on a species map means that others were recorded there and this one was not. This page shows where that can be said.",
  "coverage.visits": "Visits",
  "coverage.covered-from": "covered from {words}",
  "coverage.not-enough": "not enough to say",
  "coverage.no-visit": "No visit",
  "coverage.few-visits": "1–2 visits",
  "coverage.some-visits": "3–9 visits",
  "coverage.many-visits": "10 visits or more",
  "coverage.map-description":
    "{many, number} squares with ten visits or more, {some, number} with three to nine, {few, number} with one or two, {none, number} with none.",
  "coverage.visits-sentence":
    "<b>{many, number}</b> of {all, number} {listed, select, yes {land squares} other {squares with a record}} had ten visits or more {when}; <b>{none, number}</b> had none.",
  "coverage.map-title": "Visits to each 10 km square, {period}",
  "coverage.map-caption": "The larger the square, the more visits {when}. Hatched: none.",
  "coverage.covered":
    "<b>Covered for a species</b>: {n, plural, =1 {one visit} other {{words} or more visits}} that recorded <b>other</b> {group}, so that a species cannot make its own {comparing, select, yes {gain or loss} other {blank}}. <a>How this is counted</a>",
  "coverage.two-rules": "Under two rules",
  "coverage.two-rules-both":
    "Change can be judged in <b>{both, number}</b> of {all, number} {listed, select, yes {land squares} other {squares with a record}}{share, select, none {} other {, {share}}}, and in <b>{stricter, number}</b> under the stricter rule.",
  "coverage.two-rules-one":
    "<b>{covered, number}</b> of {all, number} {listed, select, yes {land squares} other {squares with a record}} are covered, and <b>{stricter, number}</b> under the stricter rule.",
  "coverage.own-records":
    "For a species that was recorded in a square its own records do not count, so that a little less is covered for it.",
  "coverage.rules-caption":
    "{listed, select, yes {Land squares} other {Squares with a record}} of 10 km with at least {rules} visits that named any of the {group}, in records that count for change.",
  "coverage.rules-or": "{one} or {other}",
  "coverage.territory": "Territory",
  "coverage.squares": "Squares",
  "coverage.both": "Both",
  "coverage.gap": "A square that is not covered is a gap in what is known. It says nothing about the {group} there.",
  "coverage.complete": "How complete",
  "coverage.complete-sentence":
    "Of {judged, number} squares with enough visits {when}, <b>{fullest, number}</b> have nine tenths or more of the {group} such visits can be expected to find.",
  "coverage.complete-note":
    "Expected is a lower bound, told from what was named on one visit and on two. <a>How this is estimated</a>",
  "coverage.complete-caption":
    "{listed, select, yes {Land squares} other {Squares with a record}} of 10 km by the share that the {group} named on visits make of those expected there.",
  "coverage.found-of-expected": "Found of those expected",
  "coverage.all-dates": "All dates",
  "coverage.under-half": "Less than half",
  "coverage.half": "Half to three quarters",
  "coverage.three-quarters": "Three quarters to nine tenths",
  "coverage.nine-tenths": "Nine tenths or more",
  "coverage.not-judged": "Not judged: fewer than {words} visits",
  "coverage.unsampled": "No visit that could tell",
  "coverage.land-squares": "Land squares",
  "coverage.single-records":
    "<b>Single records</b>: without species that rest on one record in the square, nine tenths or more are found in {numbers} squares. A blank is no absence, in a complete list either.",
  "coverage.number-when": "{n, number} ({when})",
  "coverage.all-dates-small": "all dates",
  "coverage.lists": "Length of lists",
  "coverage.lists-sentence": "<b>{one, number}</b> of {all, number} visits {when} named one species only.",
  "coverage.lists-caption":
    "Visits by the number of {group} on their list. Visits that found nothing, and those of records shown coarser, are counted in the last row only.",
  "coverage.list-of": "List of",
  "coverage.one": "One",
  "coverage.two-or-three": "Two or three",
  "coverage.four-or-more": "Four or more",
  "coverage.declared": "Of any length, declared complete",
  "coverage.lists-note":
    "A list of one species is seldom a whole list: that others were not on it says nothing of them. The numbers of each square are in <a>the downloads</a>.",
} as const;
