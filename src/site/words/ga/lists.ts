import type { SomeWordsOf } from "../catalogue.ts";
import type en from "../en/lists.ts";

export default {
  "lists.species": "Speicis",
  "lists.title-squares": "Speicis",
  "lists.squares": "Cearnóga",
  "lists.order-squares": "cearnóga",
  "lists.order-name": "ainm",
} satisfies SomeWordsOf<typeof en>;
