/** The field card: a sheet of paper to take out. */
export default {
  "card.title": "Field card",
  "card.of": "Field card: {place}",
  "card.print": "Print this page: the card comes out on a sheet of its own.",
  "card.open": "Field card, {n, plural, one {# line} other {# lines}}",
  "card.place": "Place, as exact as you can",
  "card.reference": "Grid reference",
  "card.date": "Date and hours",
  "card.recorder": "Recorder, and your own notes",
  "card.caption":
    "Tick what you saw, by caste where you could tell. Recorded here first, then what is expected, then the rest of the list.",
  "card.seen": "Seen",
  "card.species": "Species",
  "card.season": "January to December",
  "card.needs": "What a record needs",
  "card.group-recorded": "Recorded here",
  "card.group-expected": "Expected here",
  "card.group-rest": "Rest of the list",
  "card.rest": "{n, plural, one {One more species is} other {# more species are}} on the atlas’s list: write it in.",
  "card.others": "Others",
  "card.caution":
    "<b>Before you go.</b> Ask before leaving paths; not alone by water or on cliffs; leave nests as they are. A species that you did not find is no absence: note how long you looked.",
  "card.unsure": "Not sure? Record the group, and photograph what the last column asks for.",
  "card.send": "Send it to {address}.",
  "card.edition": "{title}, edition {edition}.",
  "card.invented": "{title}, edition {edition}. Invented records.",
  "card.evidence-note": "Text written for this demonstration: check against a current identification guide.",
} as const;
