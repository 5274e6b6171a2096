/** Words of the list of regions and of the page of one. */
export default {
  "regions.about": "The {many} recorded in each region, with first and last year.",
  "regions.lead": "{n, plural, one {# region} other {# regions}}, each with its list of species.",
  "regions.each": "Each region",
  "regions.countries": "Countries",
  "regions.provinces": "Provinces",
  "regions.counties": "Counties",
  "regions.vice-counties": "Vice-counties",
  "regions.rule":
    "A record counts for the region it states, else for the one its square lies in. A square on the boundary is in neither. <a>The method<u> of regions</u></a>",
  "regions.not-additive": "Squares and species are not additive: two records of one square can state two regions.",
  "regions.caption": "{name}: squares of 10 km",
  "regions.caption-land": "; inside and shared: those with land",
  "regions.region": "Region",
  "regions.species": "Species",
  "regions.records": "Records",
  "regions.squares": "Squares recorded",
  "regions.inside": "Squares inside",
  "regions.shared": "Squares shared",
  "regions.first": "First",
  "regions.last": "Last",
  "regions.hectads": "10 km squares",
  "regions.tetrads": "2 km squares",
  "regions.when": "When",
  "regions.about-one": "The {many} recorded in {name}, with first and last year.",
  "regions.running":
    "<a>Region</a>{code, select, none {} other { {code}}}{territory, select, none {} other { · {territory}}}",
  "regions.nothing": "No record is assigned to this region. That says nothing about what lives here.",
  "regions.sentence":
    "{taxa, plural, =0 {No species} one {{words} species} other {{words} species}} in {records, plural, one {# record} other {# records}}{span, select, none {} other {, {span}}}.",
  "regions.assigned": "Every record is assigned to a region.",
  "regions.not-assigned":
    "**{records, plural, one {# record} other {# records}}** {records, plural, one {is} other {are}} not assigned: {parts}.",
  "regions.boundary": "{n, number} of squares that touch several regions",
  "regions.outside": "{n, number} of squares in none",
  "regions.no-square": "{n, number} that fill no square",
  "regions.squares-lie": "{inside, number} in this region alone, {shared, number} shared with another",
  "regions.fact-squares": "Squares of its records",
  "regions.fact-squares-said":
    "{hectads, plural, one {# square} other {# squares}} of 10 km, {tetrads, number} of 2 km",
  "regions.fact-land": "10 km squares with land",
  "regions.fact-stated": "Records that state it",
  "regions.fact-stated-said": "{stated, number} of {records, plural, one {# record} other {# records}}",
  "regions.recorded": "Recorded here",
  "regions.recorded-note": "A species that is not listed was not recorded. That does not say that it is not here.",
  "regions.boundary-note":
    "A square on the boundary is in no region unless its record states one: {n, plural, one {# record of the atlas is} other {# records of the atlas are}} not assigned, and may be missing here. Lists and squares of regions do not add up. <a>The method<u> of regions</u></a>",
  "regions.recorded-caption": "By number of records. A record of a species counts for its group too.",
  "regions.start": "Start with these",
  "regions.start-said":
    "{n, plural, one {One species makes} other {{words} species make}} {share, select, none {most} other {{share}}} of the records here: whoever knows them can begin.",
  "regions.start-note":
    "The most recorded of the region, groups left out. Strip: January to December; thick, the middle half of its records.",
  "regions.wanted": "Squares that want a visit",
  "regions.wanted-note": "The first {n} that touch this region. <a>All of them, and how they are ranked</a>",
  "regions.all": "All regions",
} as const;
