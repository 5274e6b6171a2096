/** Words of the large map of a species. */
export default {
  "large-map.title": "{name}: large map",
  "large-map.description": "Where {name} was recorded, by region and by period, with the number of squares of each.",
  "large-map.heading": "Large map",
  "large-map.back": "Back to the account",
  "large-map.lead":
    "One region or the whole, two periods compared or one alone. It works without scripts, and prints what is chosen.",
  "large-map.lead-periods":
    "One region or the whole, one period or every date. It works without scripts, and prints what is chosen.",
  "large-map.where": "Region",
  "large-map.when": "Period",
  "large-map.compared": "{earlier} and {later} compared",
  "large-map.all-dates": "All dates",
  "large-map.whole": "The whole atlas",
  "large-map.part": "{part, select, north {{name}, north} middle {{name}, middle} other {{name}, south}}",
  "large-map.compared-says":
    "{place}: of {all, plural, one {# square} other {# squares}} of 10 km it was found in both periods in **{both, number}**, **newly found in {new, number} and not refound in {gone, number}**. {apart, plural, =0 {} one {In # more it was recorded and cannot be compared.} other {In # more it was recorded and cannot be compared.}}",
  "large-map.period-says":
    "{place}, {time}: recorded in **{recorded, plural, =0 {none} other {#}}** of {all, plural, one {# square} other {# squares}} of 10 km. {blank, plural, one {# was} other {# were}} covered without a record of it, {open, plural, one {# was} other {# were}} not covered.",
  "large-map.unknown-says":
    "{place}, {time}: recorded in **{recorded, plural, =0 {none} other {#}}** of {all, plural, one {# square} other {# squares}} of 10 km.",
  "large-map.tetrads":
    "{n, plural, =0 {No record there names a 2 km square.} one {Recorded in # square of 2 km.} other {Recorded in # squares of 2 km.}}",
  "large-map.key-hectad": "Recorded in the 10 km square",
  "large-map.key-hectad-note": "grey: somewhere in it",
  "large-map.key-tetrad": "Recorded in the 2 km square",
  "large-map.key-tetrads": "Recorded",
  "large-map.scale": "{n, number} km",
  "large-map.caption": "Squares of the {grids}.",
  "large-map.withheld": "Where it was recorded is not shown.",
  "large-map.table": "The map as a table",
  "large-map.table-caption":
    "Squares of 10 km by region: of the two periods compared, of each period, and of every date.",
  "large-map.table-caption-periods": "Squares of 10 km by region: of each period, and of every date.",
  "large-map.region": "Region",
  "large-map.both": "Found in both",
  "large-map.new": "Newly found",
  "large-map.gone": "Not refound",
  "large-map.apart": "Cannot be compared",
  "large-map.codes": "Every square by name",
  "large-map.codes-caption":
    "Squares of 10 km with a record, by their 100 km square. The table of squares, with years and visits, is among the downloads of the account.",
  "large-map.block": "100 km square",
  "large-map.recorded": "Recorded",
  "large-map.off-map": "Records that are not on the maps",
  "large-map.off-map-says":
    "Used records that are on no map of that size, by reason. They count in the season, the years and the totals.",
  "large-map.reason": "Reason",
  "large-map.size": "Squares",
  "large-map.records": "Records",
  "large-map.kilometres": "{n, number} km",
  "large-map.zoom": "For one square at a time, <a>the map that zooms</a>; it needs scripts.",
} as const;
