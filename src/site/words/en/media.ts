/** Words of pictures and of the page that names their makers. */
export default {
  "media.title": "Credits",
  "media.lead": "What is shown here and was made by somebody: pictures, type, coast.",
  "media.photograph": "Photograph.",
  "media.drawing": "Drawing.",
  "media.clip": "Clip.",
  "media.shows": "Shows: {what}.",
  "media.credit": "{credit}, <a>{licence}</a>.",
  "media.pictures": "Pictures",
  "media.none": "This atlas shows no photographs, drawings or clips beside its diagrams.",
  "media.count":
    "{n, plural, one {# picture} other {# pictures}}. Nothing in their files tells where, when or with what they were made.",
  "media.file": "File {name}",
  "media.diagrams": "Diagrams",
  "media.diagrams-own":
    "The drawn bodies are made by the program from the scheme’s table of characters. They may be used as the data: <a>{licence}</a>.",
  "media.type": "Type",
  "media.type-own":
    "Brygada 1918 and Source Sans 3, each under the <a>SIL Open Font Licence 1.1</a>, cut down to the letters in use.",
  "media.coast": "Coast, lakes and borders",
} as const;
