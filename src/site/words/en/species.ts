/** Words of a species page. */
export default {
  "species.title": "{vernacular}, {scientific}",
  "species.description": "When and where {name} was recorded.",
  "species.contents": "On this page",
  "species.know": "How to know it",
  "species.alike": "What it is confused with",
  "species.alike-short": "Confused with",
  "species.when": "When",
  "species.where": "Where",
  "species.habitat": "Habitat",
  "species.change": "Change",
  "species.years": "Through the years",
  "species.lists": "What other lists say",
  "species.lists-short": "Other lists",
  "species.use": "Cite, download, correct",

  "species.place": "{aggregate, select, true {Group} other {Species}} {n, number} of {all, number}",
  "species.subgenus": "subgenus <i>{name}</i>",
  "species.also": "Also recorded as <names></names>",
  "species.members": "Includes every record of <names></names>.",
  "species.in-season": "In season",
  "species.recorded": "Recorded in",
  "species.recorded-in": "Recorded {when} in",
  "species.to-map": "To the map: {n, plural, one {# square} other {# squares}}",
  "species.withheld": "Places withheld",
  "species.no-square": "No 10 km square",
  "species.squares": "{n, plural, one {{words} square} other {{words} squares}} of 10 km",
  "species.needs": "A record needs",
  "species.first-last": "First and last record",

  "species.bar": "<b>A bar before a colour</b> marks where it differs from the first column.",
  "species.millimetres": "{from, select, same {} other {{from}–}}{to} mm.",
  "species.notes": "Notes on {n, plural, one {# character} other {# characters}}",
  "species.own-text": "Text written for this demonstration: check against a current identification guide.",

  "species.taken-for":
    "{n, plural, one {One animal is} other {{words} animals are}} taken for it{outside, plural, =0 {} =1 {, one of them outside the group} other {, {outsideWords} of them outside the group}}.",
  "species.taken-for-outside":
    "{n, plural, one {One animal} other {{words} animals}} of other groups may be taken for it.",
  "species.side-by-side": "Each name opens the two side by side. <a>All at once</a>",
  "species.difference": "<a>{name}</a>: {difference}",
  "species.record-group": "<b>Not seen well enough?</b> Record the <names></names>. {why}",
  "species.tell-members": "<b>Only with the deciding part seen is it one of them.</b> <a>{names} side by side</a>.",

  "species.flight-caption": "{n, plural, one {# record} other {# records}} with a date, by thirds of the month.",
  "species.flight-key":
    "{castes, select, true {Bars: each caste’s records, as a share of its year, by thirds of the month.} other {Bars: records, as a share of the year, by thirds of the month.}} Grey step behind: visits to any {group}, same scale. <b>Where a bar tops the step, it was recorded more often than the visits alone would give.</b> Open bars: fewer than {fewest, number} visits.",
  "species.flight-vague":
    "{n, plural, one {# record has a date} other {# records have dates}} too vague for a third of a month.",

  "species.large-map": "<a>The large map</a>: one region or one period at a time, with its counts.",

  "species.change-uncorrected": "The counts are not corrected for recording.",
  "species.change-methods": "What each method says",
  "species.change-caption": "{from} to {to}, each method by itself, with its 95 % interval",
  "species.change-key":
    "Page solid: more. Spine solid: fewer. Open: the interval includes no change. Dotted: not applicable. A halving stands as far from 0 as a doubling. No Red List assessment.",
  "species.change-more": "<a>Every figure, with its interval</a>; <b>the methods</b>",
  "species.change-more-first":
    "<a>Every figure, with its interval</a>, and <first>the map of first years</first>; <b>the methods</b>",

  "species.visited": "Visited is not preferred: recorders choose where they walk.",
  "species.every-habitat": "Every habitat, with its interval",
  "species.every-figure": "Every figure, with its interval",

  "species.by-year": "Records by year",
  "species.years-key": "Bars: records a year. Step behind: visits to any {group}, on a scale of its own.",
  "species.years-provisional": "Open: {years}, provisional.",
  "species.years-before":
    "{n, plural, one {# record from before {year} is} other {# records from before {year} are}} not drawn.",

  "species.listed":
    "{n, plural, one {One list names it. What it says} other {{words} lists name it. What they say}} was not computed here, and no figure on this page is such an assessment.",
  "species.list-for": "{category}, {jurisdiction}, {year}",
  "species.list-old":
    "<b>Older than {n, plural, one {# year} other {# years}}.</b> Much may have changed since {years}: look for a newer list before you rely on it.",

  "species.all-on-map": "Every used record is on the 10 km map.",
  "species.off-map": "{n, plural, one {# used record is} other {# used records are}} not on the 10 km map.",
  "species.off-map-why": "Why",
  "species.cited": "<i>{scientific}</i>, in {citation}",
  "species.cited-invented": "<i>{scientific}</i>, in {citation} Invented records.",
  "species.tables": "Tables of this taxon",
  "species.table": "Table",
  "species.format": "Format",
  "species.rows": "Rows",
  "species.size": "Size",
  "species.wrong": "Something wrong on this page? <a>Tell us what</a>.",
  "species.wrong-subject": "{name}: something is wrong on its page",
} as const;
