import type { WordsOf } from "../catalogue.ts";
import type en from "../en/book.ts";

export default {
  "book.contents": "Sommaire",
  "book.about": "À propos de cet atlas",
  "book.accounts": "Monographies",
  "book.methods": "Comment les chiffres ont été obtenus",
  "book.index": "Index des noms",
  "book.edition": "Édition {edition}, {date}",
  "book.cite": "Comment citer",
  "book.licence": "Licence",
  "book.coast": "Littoral",
} satisfies WordsOf<typeof en>;
