import type { SomeWordsOf } from "../catalogue.ts";
import type en from "../en/take-part.ts";

export default {
  "take-part.title": "Glac páirt",
  "take-part.month": "Mí",
} satisfies SomeWordsOf<typeof en>;
