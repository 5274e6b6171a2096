/** Words of what is kept on the reader's device. */
export default {
  "offline.newer": "A newer edition of this atlas has been published. Load the page again to see it.",
  "offline.title": "Without a network",
  "offline.lead":
    "This page is not on your device yet. What you have visited, and the pages for the field, open without a network.",
  "offline.kept": "Kept from your first visit on",
  "offline.kept-text":
    "The start page, Narrow it down, Tell apart, Practice, Find, every account of an atlas of up to 300 species, and each page you have opened, up to 400. Maps that zoom and tables to download need the network.",
  "offline.visited": "Pages you have opened",
  "offline.none": "No page yet.",
  "offline.where": "They lie in this browser alone. Nothing about you or your place is sent anywhere.",
  "offline.clear": "Remove all of it from this device",
  "offline.cleared": "Removed. The next page you open is kept again.",
  "offline.keep": "Keep this square and its neighbours on this device",
  "offline.keep-region": "Keep the squares of this region on this device",
  "offline.keeping": "Keeping …",
  "offline.keeps":
    "{kept, plural, one {# page is} other {# pages are}} kept: with their lists and field cards they open without a network.",
  "offline.some": "{kept} of {of} pages are kept; the others could not be fetched.",
  "offline.script": "Keeping pages on the device needs scripts.",
} as const;
