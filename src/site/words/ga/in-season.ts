import type { SomeWordsOf } from "../catalogue.ts";
import type en from "../en/in-season.ts";

export default {
  "in-season.title": "I séasúr",
  "in-season.heading": "I séasúr anseo",
  "in-season.species": "Speiceas",
  "in-season.strip": "Eanáir go Nollaig",
  "in-season.months": "Mí ar mhí",
} satisfies SomeWordsOf<typeof en>;
