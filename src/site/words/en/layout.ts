/** Words of every page's head and foot. */
export default {
  "layout.skip": "Skip to the page",
  "layout.main": "Main",
  "layout.languages": "Languages",
  "layout.species": "Species",
  "layout.squares": "Squares",
  "layout.regions": "Regions",
  "layout.coverage": "Coverage",
  "layout.methods": "Methods",
  "layout.downloads": "Downloads",
  "layout.invented": "Invented records.",
  "layout.edition": "{title}, edition {edition}, {date}.",
  "layout.type": "Type: Brygada 1918 and Source Sans 3, <a>SIL Open Font Licence</a>.",
  "layout.data": "Data: <a>{licence}</a>.",
  "layout.own-host": "Nothing on this page is fetched from another host.",
  "layout.wrong": "Something wrong? <a>{contact}</a>",
  "layout.part-english": "Parts of this page are not translated yet; they are in English.",
} as const;
