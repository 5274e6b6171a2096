/** Words of how far a taxon reaches: its range, its regions, and the first years of a newcomer. */
export default {
  "ranges.title": "Range",
  "ranges.method":
    "Area of occupancy: 4 km² a 2 km square with a record. Extent of occurrence: the smallest convex polygon round these squares, and round the 10 km squares in which no record reaches 2 km.",
  "ranges.none": "No established record {where}.",
  "ranges.no-area": "Its area of occupancy **is not given** {where}: {reason}.",
  "ranges.within": "Its records lie within an extent of **{extent}**.",
  "ranges.recorded":
    "Recorded in **{n, plural, one {# square} other {# squares}} of 2 km** {where}, an area of occupancy of **{area}** or more.",
  "ranges.recorded-within":
    "Recorded in **{n, plural, one {# square} other {# squares}} of 2 km** {where}, an area of occupancy of **{area}** or more, within an extent of **{extent}**.",
  "ranges.below": "below {area}",
  "ranges.coarser": "{n, plural, one {# record} other {# records}} shown coarser on purpose fill no 2 km square",
  "ranges.not-established": "{n, plural, one {# record} other {# records}} not established left out",
  "ranges.raised": "the polygon is smaller than the area of occupancy, and set equal to it",
  "ranges.no-assessment":
    "<b>No Red List assessment.</b> A threshold of criterion B counts only with two of three further conditions (few locations, continuing decline, extreme fluctuation), and in one country under regional guidance. Figures made of records are minimum figures: nobody looked everywhere.",
  "ranges.grids":
    "Squares of the {grids}{several, select, yes {, added up} other {}}. All territories together are one unit of assessment only where the unit is all of them.",
  "ranges.all-dates": "All dates",
  "ranges.of-all-dates": "of all dates",
  "ranges.others": "Range {periods}",
  "ranges.note":
    "Below: the smallest threshold of criterion B that the figure is strictly below, of the area of occupancy (B2: 10, 500, 2,000 km²) and of the extent (B1: 100, 5,000, 20,000 km²); none where nothing stands. Territories and periods can share squares, and do not add up. More records alone make both figures grow: {records, number} established records of any date stand behind them.",
  "ranges.records-in": "Records in",
  "ranges.occupancy": "Area of occupancy",
  "ranges.occupancy-squares": "2 km squares, 4 km² each",
  "ranges.extent": "Extent of occurrence",
  "ranges.without-tetrad": "10 km squares with no record to 2 km",
  "ranges.squares": "{n, plural, one {# square} other {# squares}}",
  "ranges.not-given": "not given: {reason}",
  "ranges.part-of": "{part, number} of {all, number}",
  "ranges.regions": "Regions",
  "ranges.regions-method": "A record counts for the region it states, else for the one its finest square lies in.",
  "ranges.regions-sentence": "Recorded in **{found, number}** of {all, plural, one {# region} other {# regions}}.",
  "ranges.regions-none": "{n, plural, one {# record is} other {# records are}} of no one region.",
  "ranges.regions-note": "Not recorded in a region is no absence. Squares do not add up: one can count in two regions.",
  "ranges.regions-summary": "{layer} it was recorded in, with first and last year",
  "ranges.regions-caption": "Records of all dates",
  "ranges.region": "Region",
  "ranges.first": "First",
  "ranges.last": "Last",
  "ranges.hectads": "10 km squares",
  "ranges.tetrads": "2 km squares",
  "ranges.records": "Records",
  "ranges.not-assigned": "Not assigned",
  "ranges.not-assigned-why": "(boundary, or in none)",
  "ranges.first-years": "First years",
  "ranges.first-years-method":
    "A taxon without a square in the earlier period has no change to tell, only when it was first recorded where.",
  "ranges.first-years-none": "No square of it has a year.",
  "ranges.first-years-one": "First recorded in **{first}**, in {words} {n, plural, one {square} other {squares}}.",
  "ranges.first-years-more":
    "First recorded in **{first}**, in {words} {n, plural, one {square} other {squares}}; by {last} in **{all}**.",
  "ranges.first-years-class": "{n, plural, one {# square} other {# squares}} first recorded in {years}",
  "ranges.first-years-description":
    "{classes}; {n, plural, one {# square} other {# squares}} covered in neither period.",
  "ranges.first-recorded": "First recorded {years}",
  "ranges.covered-in-neither": "Covered in neither period",
  "ranges.nobody-can-say": "nobody can say",
  "ranges.first-years-map": "In which years was {name} first recorded in each 10 km square?",
  "ranges.first-years-caption":
    "The larger the square, the earlier the first record. Blank: covered in some period, and not recorded there. Hatched: covered in neither period.",
  "ranges.first-years-undated": "{n, number} without a year are not drawn.",
  "ranges.first-years-late": "A first record may come long after a first arrival.",
  "ranges.new-squares": "New squares by year",
  "ranges.new-squares-caption":
    "Squares of 10 km by the year of their first record; years without a new one are left out",
  "ranges.new": "New",
  "ranges.all-so-far": "All so far",
} as const;
