/** Words of the home page. */
export default {
  "home.ways": "Ways in",
  "home.narrow": "Where, when and what you saw, in any order. Your place stays on your device.",
  "home.tell-apart": "Any two to four side by side, with what differs.",
  "home.first-seen": "By what you see first",
  "home.first-seen-note": "Tail, then coat: groups, each with what to look at next.",
  "home.species-note": "Season, number of squares and range in one table.",
  "home.squares": "What lives in my square",
  "home.squares-note": "First and last year, and what is still to be found.",
  "home.wanted-note": "Where one good day would tell most.",
  "home.take-part-note": "What to look for this month, what to photograph, what to write down.",
  "home.groups-note":
    "Each group’s name opens its members side by side, with the parts that decide. Names in grey are groups to record when the deciding part was not seen.",
  "home.groups-note-plain":
    "Choose the group that looks right, then its members one by one. Names in grey are groups to record when the deciding part was not seen.",
  "home.species": "Species",
} as const;
