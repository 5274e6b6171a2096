/** Words of the page of one 10 km square and of the list of squares. */
export default {
  "squares.title": "Squares",
  "squares.about": "Every 10 km square of the atlas, with the {many} recorded in it.",
  "squares.lead":
    "{squares, plural, one {# square} other {# squares}} of 10 km, each with its list of species; {visited, plural, one {# has} other {# have}} been visited.",
  "squares.key":
    "Each block is a square of 100 km, north at the top; its letters with the two figures name a 10 km square. Bold: {least, plural, one {# visit} other {# visits}} or more{when, select, none {} other { {when}}}. Pale ground: fewer. Plain: no visit, which says nothing about what lives there.",
  "squares.choose": "Choose its square of 100 km, then the figures.",
  "squares.wanted": "<a>Squares that want a visit</a>: where a day out would add most.",
  "squares.of-grid": "{squares, plural, one {# square} other {# squares}} of the {grid}.",
  "squares.blocks": "Squares of 100 km: {territory}",
  "squares.about-one": "{many} recorded in the 10 km square {square}.",
  "squares.running": "10 km square",
  "squares.centre": "Centre",
  "squares.north": "{degrees}° N",
  "squares.south": "{degrees}° S",
  "squares.east": "{degrees}° E",
  "squares.west": "{degrees}° W",
  "squares.visits": "Visits",
  "squares.visits-none": "none {when}",
  "squares.visits-some": "{n, number} {when}",
  "squares.between": "Between the periods",
  "squares.regions": "{n, plural, one {Region} other {Regions}}",
  "squares.next": "Next visit",
  "squares.next-rank":
    "{rank, number} of {all, number} <a>squares that want one</a>: {visits, plural, one {# visit} other {# visits}} could add about {gain} species",
  "squares.next-when": "best {third}",
  "squares.recorded": "Recorded here",
  "squares.recorded-note": "A species that is not listed was not recorded. That does not say that it is not here.",
  "squares.recorded-covered":
    "A square is covered for a species when others were recorded on {least, plural, one {# visit} other {# visits}} or more.",
  "squares.by-records": "By number of records.",
  "squares.spine": "By number of records. Spine {from}, page {to}.",
  "squares.species": "Species",
  "squares.first": "First",
  "squares.last": "Last",
  "squares.records": "Records",
  "squares.where": "Where in the square",
  "squares.tetrads":
    "{visited, plural, one {# of {all, number} tetrads has} other {# of {all, number} tetrads have}} records. **{letter}** has the longest list, {taxa, plural, one {# species} other {# species}}.",
  "squares.tetrads-none": "No record here is precise to 2 km.",
  "squares.tetrads-unvisited": "No record to 2 km comes from {letters}.",
  "squares.tetrads-key":
    "The letter names the 2 km square, the figure is its number of species; the larger the black square, the more. Hatched: no record to 2 km.{sea, select, yes { Without ground: no land.} other {}}",
  "squares.tetrads-title": "Species recorded in each 2 km square of {square}",
  "squares.tetrads-text": "{list}.",
  "squares.tetrads-empty": "None.",
  "squares.years": "Through the years",
  "squares.years-caption":
    "Bars: records a year. Step behind: visits, on a scale of its own.{invented, select, yes { Invented records.} other {}}",
  "squares.around": "Around it",
  "squares.side": "{side, select, north {north} east {east} south {south} other {west}}",
  "squares.all": "All squares",
  "squares.caution":
    "<b>Before you go.</b> {visited, select, yes {A record is no right of way: ask} other {Ask}} before leaving paths, keep away from water and cliffs alone, tell somebody where you are, and leave nests as they are.",
} as const;
