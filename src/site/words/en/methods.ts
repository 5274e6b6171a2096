/** Words of the methods page but those of the methods of change: the rules in force, and what was left out. */
export default {
  "methods.title": "Methods",
  "methods.description": "The settings in force, and what was left out and why.",
  "methods.lead":
    "The rules by which edition {edition} was made, as they were in force, and the number of records each of them left out.",
  "methods.section-grids": "Grids",
  "methods.section-placing-records": "Placing records",
  "methods.section-dates-and-periods": "Dates and periods",
  "methods.section-names": "Names",
  "methods.section-records-shown-coarser": "Records shown coarser",
  "methods.section-coverage": "Coverage",
  "methods.section-flight-periods": "Flight periods",
  "methods.section-habitats-and-flowers": "Habitats and flowers",
  "methods.section-range": "Range",
  "methods.section-season": "Season",
  "methods.section-regions": "Regions",
  "methods.section-not-a-red-list-assessment": "Not a Red List assessment",
  "methods.grid": "{territory}: squares of the {grid}.",
  "methods.grid-accuracy":
    "{territory}: squares of the {grid} ({crs}; coordinates are brought to it{shift, select, none {} other { by the grid-shift file {shift}}} to about {metres} m).",
  "methods.grid-datum": "References are taken to be on {datum}: that is a setting, for the references do not say.",
  "methods.placing-squares":
    "A grid reference names a square. It counts for the 10 km or 2 km square it lies in, and never for a finer one: a 10 km reference fills no 2 km square, and a 5 km quarter fills its 10 km square only. References are cut off, never rounded.",
  "methods.placing-points":
    "A point is a circle of its uncertainty. It counts for the square of its centre when at least {percent, number} % of the circle lies there. Set to 50 %, {records, number} more records would fill a 2 km square, and {tetrads, number} more 2 km squares would be occupied by something; more of them would be wrong.",
  "methods.placing-radius":
    "The radius is the largest of what the record states, what its source sets, and what the digits as written can carry. Where nothing is known it is {metres, number} m.",
  "methods.placing-disguise":
    "{n, number} used records had coordinates that stand on the centre or corner of a square, and were read as that square.",
  "methods.placing-line":
    "{n, number} used records lie within 5 m of a 2 km line, nearer than some transforms are exact, and could fall on its other side.",
  "methods.placing-without":
    "Of {used, number} used records, {hectad, number} fill no 10 km square and {tetrad, number} no 2 km square; the page of each species says why.",
  "methods.dates-periods":
    "{n, plural, =1 {One period is} other {{words} periods are}} mapped: {periods}. A record counts in a period only if its whole date lies inside; {vague, number} used records lie in none and count as recorded at some time.",
  "methods.dates-interval":
    "The end of a written interval is read as {end, select, inclusive {included} other {not included}}. Under the other reading {records, number} records would count in another period or third of a month, or as a single day.",
  "methods.dates-provisional":
    "Records still arrive for {years}: {n, plural, =1 {that year is} other {those years are}} provisional.",
  "methods.names":
    "Names are matched to the checklist through its synonyms. A qualified name (cf., aff.) never counts as the species, and a name that is not matched is left out and listed for the scheme, never guessed.",
  "methods.names-groups":
    "{n, plural, =1 {One entry is a group} other {{words} entries are groups}} of species that cannot always be told apart. A record of a member counts for every group above it; a record of the group counts for no member.",
  "methods.coarser":
    "Records that could do harm are shown no finer than the scheme’s list allows: the square is cut off at that size, never moved. A record whose place is withheld is on no map and still counts in seasons, years and totals. Every map, count, sentence and table is made from the records as they are shown.",
  "methods.coarser-land":
    "Where a 10 km square has land in a single 2 km square it would tell as much as that one, and the place is withheld.",
  "methods.coarser-visits":
    "A record shown coarser than it is known makes a visit of its own and covers no square for another species; so what else is told of a square does not lead to it.",
  "methods.coarser-entry":
    "<li><b>{taxon}</b>{scope, select, none {} other { ({scope})}}: {level, select, withheld {place withheld} other {shown at {level}}}. {reason} To be looked at again by {date}.</li>",
  "methods.coverage-visit":
    "A visit is one place (a site named by the scheme, a 1 km square, or the record’s own square where it is coarser), one day, one recorder or party, however names are spelt and in whatever order a party is named. A record whose date spans days makes no visit.",
  "methods.coverage-named": "Every visit names a recorder.",
  "methods.coverage-nameless":
    "{n, number} of {all, number} visits ({percent, plural, =0 {less than 1 %} other {# %}}) name nobody: there place and day alone make the visit, which may join several people’s lists.",
  "methods.coverage-lists":
    "The length of a visit’s list is the fewest {group} that explain its names, in classes of one, two or three, and four or more. A list of one is often no list; only those declared complete tell what was not found.",
  "methods.coverage-rule":
    "A square is covered for a species in a period when at least {least, plural, =1 {one visit} other {# visits}} there recorded other {group}. The species’ own records, and those of groups that may hold it, do not count towards it, so that a species cannot make its own gain or loss; nor does a visit that reports only what was not found, or a record of a provisional year or of what is not established there. Beside that rule everything is told under a stricter one of {more} visits.",
  "methods.coverage-blank":
    "A square that nobody covered is hatched. A blank square was covered and the species not reported there, which is not proof of absence.",
  "methods.coverage-expected":
    "<p>How many {group} a square’s visits can be expected to find is estimated from those named on one visit (<i>Q</i><sub>1</sub>) and on two (<i>Q</i><sub>2</sub>) of <i>m</i>; observed over expected is its completeness.</p><formula>expected = observed + ((<i>m</i> − 1)/<i>m</i>) <i>Q</i><sub>1</sub>² / (2 <i>Q</i><sub>2</sub>)</formula><formula>where <i>Q</i><sub>2</sub> = 0: expected = observed + ((<i>m</i> − 1)/<i>m</i>) <i>Q</i><sub>1</sub> (<i>Q</i><sub>1</sub> − 1) / 2</formula>",
  "methods.coverage-bound":
    "It is a lower bound, with a log-normal 95 % interval, and speaks from {visits} visits. What was named once drives it, and so does a misidentification: it is given with and without species that rest on a single record. Source: A. Chao (1987), <i>Biometrics</i> 43: 783–791; small-sample form R. K. Colwell and others (2012), <i>Journal of Plant Ecology</i> 5: 3–21; sample coverage A. Chao and L. Jost (2012), <i>Ecology</i> 93: 2533–2547.",
  "methods.coverage-reading":
    "Our reading: samples are visits of everyday recording and mass events; surveys for one species, museum and literature lots, and records shown coarser are left out. A group is not counted where a member of it was recorded.",
  "methods.flight-thirds":
    "Bars count records in thirds of the month: days 1–10, 11–20, and 21 to the end, which holds 8 to 11 days. A record enters only if its whole date lies in one third; a record known only to its month enters none.",
  "methods.flight-castes":
    "Castes are those the record states. Records that state none are a class of their own and are never shared out among the others.",
  "methods.flight-step":
    "The step behind the bars is the number of visits to all {group}, on the same scale. A third of the month with fewer than {visits, number} visits is drawn as an open bar.",
  "methods.use-ratio":
    "Records that state a habitat, a flower or the like are set against what recorders visited: the term’s share of the visits with the species, over its share of all visits that state one. The ratio is 1 where it was recorded as often there as anywhere (Manly and others 2002). A habitat counts for the whole visit; a flower, nest site or host for the {group} that was on it, each once a visit.",
  "methods.use-interval":
    "Only everyday recording counts: a survey for one species and a museum lot chose their places by it. The interval is that of the linearised log ratio between 10 km squares, whose visits are alike (Liang and Zeger 1986).",
  "methods.use-limits":
    "The ratio is not given where fewer than {visits} visits state a term for the species, or fewer than {term} state the term at all. <b>Visited is not preferred:</b> recorders choose where they walk and which flowers they look at, and write down what they think worth writing.",
  "methods.not-a-red-list":
    "Counts of squares and changes between periods describe this atlas’s records. They are no assessment of a species’ risk of extinction, which needs more than squares and is made by those responsible for it in each country.",
  "methods.left-out": "What was left out",
  "methods.left-out-sentence":
    "Of {read, plural, one {# record} other {# records}} read, {held, number} are held and {unused, number} not used.",
  "methods.left-out-link": "Every status and reason, added up",
  "methods.no-square-caption":
    "Used records that support no square of a size. They count for totals, seasons and larger squares.",
  "methods.reason": "Reason",
  "methods.square": "Square",
  "methods.records": "Records",
  "methods.half":
    "A laxer rule of half the circle instead of the one in force would add {n, plural, one {# record} other {# records}} to some 2 km square, at the price of more in the wrong one.",
  "methods.checks-caption": "Automated checks. A finding is a question to a person; most do not keep a record out.",
  "methods.check": "Check",
  "methods.what-it-does": "What it does",
  "methods.blocks": "holds the record",
  "methods.ask": "asks",
  "methods.note": "notes",
} as const;
