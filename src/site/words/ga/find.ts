import type { SomeWordsOf } from "../catalogue.ts";
import type en from "../en/find.ts";

export default {
  "find.title": "Cuardaigh",
  "find.button": "Cuardaigh",
  "find.kind.species": "speiceas",
  "find.kind.group": "grúpa nach féidir a dhealú",
  "find.kind.region": "réigiún",
  "find.kind.page": "leathanach",
  "find.kind.square": "cearnóg 10 km",
} satisfies SomeWordsOf<typeof en>;
