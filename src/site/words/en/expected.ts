/** What is expected in a square or region and not yet found, and the field card. */
export default {
  "expected.title": "Expected, not found {when}",
  "expected.title-region": "Expected, not recorded {when}",
  "expected.one-likely":
    "{n, plural, one {**One more species** has} other {**{words} more species** have}} a chance of 1 in 2 or better here: first **{name}**.",
  "expected.none-likely": "Nothing more is likelier here than not. Nearest to it comes **{name}**.",
  "expected.nothing":
    "Nothing can be expected here: it takes land in at least five tetrads, {least} covered squares around, and a species of theirs that was not found here.",
  "expected.nothing-region": "Nothing is expected in this region beyond what was recorded {when}.",
  "expected.basis":
    "Told from the covered squares within {km} km, near ones counting more, and from the visits here that did not find it. It is a chance, not a record: nobody reported it here {when}. It knows no habitat. <a>The method<u> of what is expected</u></a>",
  "expected.caption": "Not recorded {when}, likeliest first. Of the covered squares around, how many have it.",
  "expected.caption-region": "Not recorded in the region {when}, each in the square where it is likeliest.",
  "expected.species": "Species",
  "expected.when": "When to look",
  "expected.around": "Squares around with it",
  "expected.of": "{with, number} of {near, number}",
  "expected.chance": "Chance here",
  "expected.odds": "about {n} in 10",
  "expected.odds-high": "over 9 in 10",
  "expected.likeliest": "Likeliest in",
  "expected.last": "last in {year}",
  "expected.visits": "{n, plural, one {missed on # visit} other {missed on # visits}}",
  "expected.few-dates": "too few dates",
  "expected.more": "{n, plural, one {One more has} other {# more have}} a smaller chance: <a>the table of all</a>.",
} as const;
