/** Words of "In season here", on the home page and its own. */
export default {
  "in-season.title": "In season",
  "in-season.heading": "In season here",
  "in-season.lead":
    "What was recorded in each month of the year, over all years and places of this atlas; and what to look for where you are today.",
  "in-season.description": "Which {group} are in season, month by month, and which of them were recorded near you.",
  "in-season.most": "Seasons of the most recorded",
  "in-season.now": "In season, {third}",
  "in-season.now-here": "In season here: {square}, {third}",
  "in-season.species": "Species",
  "in-season.strip": "January to December",
  "in-season.eight": "Eight in ten records",
  "in-season.near": "Near here",
  "in-season.note":
    "Thick: the middle half of the records; thin: from the tenth to the ninetieth of a hundred. All years and places together.",
  "in-season.note-now":
    "Likeliest first: records of this third of the month beside the visits made in it, all years and places together. The coloured line is today.",
  "in-season.note-here":
    "Likeliest first: the share of visits within {km} km that recorded it since {year}, times its season. The coloured line is the date.",
  "in-season.note-here-all":
    "Likeliest first: the share of visits within {km} km that recorded it, times its season. The coloured line is the date.",
  "in-season.choose": "Choose a square",
  "in-season.another": "Another square or date",
  "in-season.place": "Where you are",
  "in-season.place-hint": "A grid reference, such as {square}, or a latitude and longitude.",
  "in-season.when": "When",
  "in-season.show": "Show",
  "in-season.locate": "Use this device’s location",
  "in-season.forget": "Forget this place",
  "in-season.kept": "The place stays on this device and is sent to nobody.",
  "in-season.no-script":
    "For your own square and today’s date this page needs scripts. The twelve months below need none.",
  "in-season.not-a-place": "“{text}” is no grid reference or position this atlas knows.",
  "in-season.no-square": "{square} has no land and no record in this atlas.",
  "in-season.outside": "This place lies outside the squares of the atlas.",
  "in-season.no-location": "The device gave no location. Type a grid reference instead.",
  "in-season.failed": "What was recorded round this square did not arrive. Check the connection and try again.",
  "in-season.none": "Nothing was recorded often enough in this third of the month to be in season.",
  "in-season.here-year": "recorded in this 10 km square in {year}",
  "in-season.here": "recorded in this 10 km square",
  "in-season.nearest": "nearest square {km} km",
  "in-season.none-near": "no record within {km} km",
  "in-season.months": "Month by month",
  "in-season.most-in":
    "{visits, plural, =0 {No visit was made in this month.} one {From # visit.} other {From # visits.}}",
  "in-season.castes": "Seen most",
  "in-season.castes-of": "{castes}",
  "in-season.begins": "Season begins",
  "in-season.ends": "Season ends",
  "in-season.begins-note":
    "“Begins” and “ends” are the months in which the tenth and the ninetieth of a hundred dated records fall. Records say when people looked, too: little recording in winter hides winter activity.",
  "in-season.nothing": "No season: fewer than {fewest} dated records of any species.",
} as const;
