/** Words of the page of squares that want a visit. */
export default {
  "wanted.title": "Squares that want a visit",
  "wanted.about": "10 km squares where further visits could add most to what is known of {many}.",
  "wanted.lead":
    "Where {visits, plural, one {one more visit} other {{words} more visits}} could add most species to a square’s list of today, and when to go.",
  "wanted.nothing":
    "No square can be ranked yet: it takes {least} covered squares around one to say what may be found there.",
  "wanted.first":
    "**{square}** comes first: {visits, plural, one {one visit} other {{words} visits}} could add about **{gain} species**, best {third}.",
  "wanted.first-ever":
    "**{square}** comes first: {visits, plural, one {one visit} other {{words} visits}} could add about **{gain} species**.",
  "wanted.basis":
    "Each species’ chance of being there, told from the covered squares within {km} km, times the chance that {visits, plural, one {one visit records} other {one of {words} visits records}} it. <a>The method<u> of squares that want a visit</u></a>",
  "wanted.blank":
    "<b>A blank is no absence.</b> A square low on this list may want you just as much: the list knows lists of species, not habitats, and does not reach squares with hardly any visits around them.",
  "wanted.caution":
    "<b>Before you go.</b> A square is 100 km² of other people’s land: ask before leaving paths and keep to the law of the place. Not alone by water, on cliffs or mountains; tell somebody where you are. Leave nests closed and flowers standing, and never dig, drain or cut to find an animal.",
  "wanted.by-licence":
    "<b>Some places and species are protected.</b> A survey may need a permit or a licensed person; those who look after the place know.",
  "wanted.map": "Where",
  "wanted.map-title": "Species that further visits could add to each 10 km square",
  "wanted.map-caption": "The larger the square, the more species could be added. Hatched: nothing can be said.",
  "wanted.map-none": "Nothing can be said",
  "wanted.map-under": "under {most} species",
  "wanted.map-from": "{least} or more",
  "wanted.map-span": "{least} to {most}",
  "wanted.map-said": "{list}.",
  "wanted.map-class": "{words}: {n, plural, one {# square} other {# squares}}",
  "wanted.list": "The first {n}",
  "wanted.caption":
    "Ranked by what {visits, plural, one {one visit} other {{words} visits}} could add. Likely finds: those that make most of it.",
  "wanted.rank": "Rank",
  "wanted.square": "Square",
  "wanted.region": "Region",
  "wanted.visits": "Visits {when}",
  "wanted.go": "When to go",
  "wanted.gain": "Could add",
  "wanted.likely": "Likely finds",
  "wanted.any-time": "any season",
  "wanted.more": "{from, number} to {to, number}",
  "wanted.by-region": "By region",
  "wanted.by-territory": "By part of the atlas",
  "wanted.choose": "Choose one: its first {n} squares stand below. A square on a boundary counts in each.",
  "wanted.none-here": "No square can be ranked here yet.",
  "wanted.of-region": "{name}",
} as const;
