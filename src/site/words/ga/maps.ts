import type { SomeWordsOf } from "../catalogue.ts";
import type en from "../en/maps.ts";

export default {
  "maps.invented": "Taifid chumtha.",
} satisfies SomeWordsOf<typeof en>;
