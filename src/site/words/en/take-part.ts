/** Words of the pages about taking part. */
export default {
  "take-part.title": "Take part",
  "take-part.lead":
    "What, where, when, and who saw it: four facts make a record. A common one, well written down, is worth as much as a rarity.",
  "take-part.description":
    "What to look for this month, how to photograph it, what to write down, and where to send it.",
  "take-part.start": "Start with these",
  "take-part.start-say": "A few for each month that a beginner can settle by sight or with one photograph.",
  "take-part.start-basis":
    "Chosen from the records of this atlas: often recorded, in season, and with a mark that settles the name by sight or in a photograph. None whose record needs a specimen; none whose place is kept back.",
  "take-part.start-title": "Start with these: {place}",
  "take-part.start-description":
    "Species to start with in {place}, month by month, each with the mark that settles it.",
  "take-part.start-lead": "Month by month, what to look for first in {place}, and the mark that settles it.",
  "take-part.everywhere": "the whole atlas",
  "take-part.month": "Month",
  "take-part.look-for": "Look for",
  "take-part.this-month": "this month",
  "take-part.by-region": "By region",
  "take-part.by-region-note": "Invented regions of a demonstration tell nothing about real ones.",
  "take-part.all-months": "Every month with the marks that settle",
  "take-part.nothing":
    "Nothing a beginner could settle was recorded often enough then. Record what you see, with a photograph, and name the group if the species is not sure.",
  "take-part.whom": "{castes} of {name}",
  "take-part.settle-sight":
    "{castes, select, none {Look at} other {{castes}: look at}} {segment, select, yes {} other {the }}**{part}**: {state}.",
  "take-part.settle-photograph":
    "{castes, select, none {Photograph} other {{castes}: photograph}} {segment, select, yes {} other {the }}**{part}**: {state}.",
  "take-part.segments": "T1 to T6 are the segments of the abdomen, counted from the waist.",
  "take-part.photograph": "Photograph the parts that decide",
  "take-part.photograph-say":
    "{n, plural, one {One part of the body settles a name} other {{words} parts of the body settle names}} in a photograph. Three pictures, from above, from the side and of the face, show nearly all of them.",
  "take-part.colon": ": ",
  "take-part.part": "Part",
  "take-part.how": "How",
  "take-part.decides": "Decides",
  "take-part.how-face": "From the front or a little to the side, level with the head. Wait until it drinks.",
  "take-part.how-thorax": "From straight above, with the wings folded or spread, so that the bands are seen whole.",
  "take-part.how-abdomen":
    "From straight above and behind, wings apart if they will; one picture more from the side. Let no flower hide the tip.",
  "take-part.how-leg": "From the side and low, with the hind leg clear of the flower: its shine and its hairs decide.",
  "take-part.how-wings": "With the wings spread against something pale, in plain light.",
  "take-part.how-size":
    "With something of known size beside it, or the flower named: a photograph alone tells no size.",
  "take-part.how-antenna":
    "Close, from the front, focused on the antennae; the first segments after the long one decide.",
  "take-part.how-coat": "From above and from the side in even light: flash makes pale hairs white.",
  "take-part.how-other": "Near and sharp, in even light, from two sides.",
  "take-part.photograph-more":
    "Take many and keep the sharp ones. Do not change colours, and send the picture whole: a part cut off may be the one that decides. Leave the animal where it is.",
  "take-part.write": "What to write down",
  "take-part.write-say": "On the spot, before you forget. The rest can wait for the evening.",
  "take-part.write-name": "What it was",
  "take-part.write-name-note":
    "Any name this atlas knows, in any language. If you are not sure of the species, the group.",
  "take-part.write-date": "The date",
  "take-part.write-date-note":
    "The day, as 2025-05-14. If only the month is known, 2025-05; never the first of the month for want of better.",
  "take-part.write-place": "The place",
  "take-part.write-place-note":
    "A grid reference such as {square}, or latitude and longitude; and the name of the place as you would tell it to somebody.",
  "take-part.write-caste": "{castes}",
  "take-part.write-caste-note":
    "What you saw of these, each with its number. Leave it empty if you could not tell: that is information too.",
  "take-part.write-count": "How many",
  "take-part.write-count-note": "A whole number. “Several” is nothing; leave it empty.",
  "take-part.write-who": "Who saw it, and who named it",
  "take-part.write-who-note": "Two people may differ. No names of children: write the school or the group.",
  "take-part.write-evidence": "What the name rests on",
  "take-part.write-evidence-note": "Sight, photograph or specimen, and the part that was seen.",
  "take-part.precise": "How precise",
  "take-part.precise-say": "As precise as you know, and no more.",
  "take-part.precise-1":
    "A 100 m reference (six figures) is plenty for an animal that flies. A 2 km square is enough for the maps; a 10 km square still counts.",
  "take-part.precise-2":
    "Give the place where the animal was, not the car park. If you walked a kilometre and saw it somewhere on the way, say so: write the middle and half the length as the uncertainty in metres.",
  "take-part.precise-3":
    "A position from a telephone is good to ten or twenty metres in the open, far less under trees. Look at the map before you send it.",
  "take-part.precise-4":
    "Do not make a place more precise than it was, and do not move it to protect it: this atlas shows sensitive records coarser by itself.",
  "take-part.group": "When to record only the group",
  "take-part.group-say":
    "A sure group is a good record. A species guessed is a bad one, and nobody can tell which it was.",
  "take-part.group-members": "{members}",
  "take-part.group-name": "Record as",
  "take-part.group-when": "When you cannot tell",
  "take-part.group-needs": "What tells them",
  "take-part.before": "Before you go",
  "take-part.before-say": "No record is worth an accident, a quarrel or a nest.",
  "take-part.caution-safety":
    "**Alone, near water, by roads.** Tell somebody where you are and when you will be back. Keep back from banks, cliffs and tides; do not survey from a road without a verge.",
  "take-part.caution-land":
    "**Land.** A square that wants a visit is not an invitation. Where there is no clear right of access, ask first, and take no for an answer; reserves have permissions of their own.",
  "take-part.caution-nests":
    "**Nests.** Do not dig, lift or open anything to find one. Keep out of the line of flight, and tell nobody’s address with it.",
  "take-part.caution-law":
    "**Protected species and sites.** Disturbing, handling or collecting may need a licence. What the law says where you are stands above this page; leave it to people who hold the licence and the practice.",
  "take-part.caution-more": "More on <a>{title}</a>.",
  "take-part.send": "Send it",
  "take-part.sheet": "The entry sheet",
  "take-part.sheet-say":
    "One row a record, with lists to choose from. It can be read as it comes back: its columns need no explaining.",
  "take-part.sheet-xlsx": "Entry sheet as a workbook (XLSX)",
  "take-part.sheet-csv": "Entry sheet as text (CSV, UTF-8)",
  "take-part.sheet-note":
    "Keep the first row as it is. Columns may be left empty or deleted; more may stand beside them.",
  "take-part.send-to": "Send it to <a>{address}</a>.",
  "take-part.send-url": "Or enter records at <a>{address}</a>.",
  "take-part.send-nowhere": "This atlas does not say where to send records.",
  "take-part.demonstration": "Text written for this demonstration: check against a current identification guide.",
} as const;
