/** Words of the sheet of marks. */
export default {
  "design.title": "Design",
  "design.lead": "The marks {title} is made of, each with its own data, and when each is used.",
  "design.type": "Type",
  "design.type-says":
    "**Two voices.** A serif speaks: names, accounts, the sentence over a figure. A sans counts: labels, tables, controls.",
  "design.colour": "Colour",
  "design.colour-says":
    "**Form says what was found, hue that it can be judged.** Blue and bronze stand only where two periods can be compared.",
  "design.space": "Space",
  "design.space-says":
    "**Rules, not frames.** A thick rule opens a section, a thin one parts rows, and eight steps keep the distances.",
  "design.square": "The square",
  "design.square-says":
    "**A square is a small book.** Its spine is the earlier period, its page the later one. The unknown is drawn, so a blank always means that somebody looked.",
  "design.body": "The body",
  "design.body-says":
    "**A body is a ribbon.** Each part has its row and its colour, and the colour its word, for no eye should have to guess.",
  "design.charts": "Charts",
  "design.charts-says":
    "**Say it, then show it.** A sentence made from the data opens every figure, and recording effort stands behind the records.",
  "design.page": "The page",
  "design.page-says":
    "**Nothing moves and nothing hides.** It works by keyboard, without scripts, on paper and at 320 pixels.",

  "design.role-name": "Name: the head of an account, once a page",
  "design.role-scientific": "Scientific name: always in italics, with its author in the sans",
  "design.role-lead": "Lead: one sentence under the name",
  "design.role-heading": "Heading of a section, at its left from a tablet on",
  "design.role-say": "Sentence over a figure: what it shows, with the numbers that matter",
  "design.role-prose": "Prose of an account",
  "design.role-body": "Facts, tables and controls",
  "design.role-note": "Note: how to read a figure",
  "design.prose-sample":
    "What the animal looks like stands in the present; what was recorded stands in the past, with its years.",

  "design.on-light": "On light paper",
  "design.on-dark": "On dark paper",
  "design.token": "Token and use",
  "design.ratios": "Each colour on paper and on leaf, with its contrast on both, computed by the formula of WCAG 2.2.",
  "design.use-paper": "the page, and the sea",
  "design.use-leaf": "land, a field, a cell",
  "design.use-ink": "text and bars",
  "design.use-ink-2": "captions and labels",
  "design.use-ink-3": "the least contrast text has",
  "design.use-accent": "the scheme’s own: links, focus, what differs",
  "design.use-edge": "ticks, borders of fields, the zero line",
  "design.use-rule": "decoration only",
  "design.use-both": "found in both periods, recorded",
  "design.use-new": "newly found; marks, never text",
  "design.use-gone": "not refound; marks, never text",
  "design.use-part": "recorded, cannot be compared",
  "design.use-hatch": "not covered; on leaf only",
  "design.use-effort": "recording effort behind records, under its line",

  "design.space-steps": "Steps of {steps} pixels: the small ones inside a mark, the large ones between sections.",

  "design.map-glyph":
    "The same mark stands on the map, in its key, in tables and at the end of an interval. Light and dark, in grey and for eyes that part no red from green, the classes stay apart by form.",
  "design.map-key":
    "The key: first how to read one square, then each class in words with its number of squares. It is never folded.",
  "design.map-small": "The small map: whole squares and no hatch, where a list has a row for each species.",
  "design.map-number":
    "The square of a number map grows with the number in five steps, from nobody to many; one ink is enough.",

  "design.plan-empty": "A body plan without colours: no taxon of this atlas is described by it.",
  "design.no-plan": "This atlas has no body plan: nothing is drawn of bodies, and the accounts say it in words.",

  "design.chart-season":
    "The season, one row a caste: bars are its records, the step behind is all visits, an open bar has too few visits to trust.",
  "design.chart-strip":
    "The season in one line, for lists: thin from the tenth to the ninetieth of a hundred records, thick over the middle half, a tick at the middle.",
  "design.chart-years": "Records by year over visits, with a bracket for each period that is compared.",
  "design.chart-interval":
    "An interval of change ends in a square of the map: page solid for more, spine solid for fewer, open where no change is inside it, dotted where it cannot be judged.",
  "design.chart-use":
    "Use of surroundings: the open square is where visits went, the filled one where it was recorded.",

  "design.link-sample": "A link says where it leads",
  "design.focus-sample": "what has the focus",
  "design.link-use":
    "Links are underlined and in the accent. Whatever has the keyboard’s focus has an outline of three pixels.",
  "design.choice-use":
    "One of several: the chosen answer is bold over the accent. Radio buttons do it, so arrow keys work and no script is needed.",
  "design.grid": "Grid",
  "design.squares": "Squares of 10 km with land",
  "design.table-use":
    "Tables have rules between rows and none between columns; numbers stand at the right, in figures of one width.",
  "design.notice-sample": "A notice stands over the head of every page.",
  "design.invented-use": "The notice over the head of every page, where all its readers must know something first.",
  "design.caution-sample": "<b>Before you go.</b> Ask before leaving paths, and leave nests as you found them.",
  "design.caution-use":
    "A caution has a bar at its left, two sentences and a bold beginning. It stands beside what it is about.",
  "design.fold-sample": "What else there is to know",
  "design.fold-inside":
    "Evidence folds on a telephone and stands open on a desk and on paper. Maps, keys, seasons and sentences never fold.",
  "design.fold-use": "A fold keeps a long table out of the way until it is wanted.",
} as const;
