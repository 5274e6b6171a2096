import type { SomeWordsOf } from "../catalogue.ts";
import type en from "../en/layout.ts";

export default {
  "layout.skip": "Téigh chuig an leathanach",
  "layout.main": "Príomhroghchlár",
  "layout.languages": "Teangacha",
  "layout.species": "Speicis",
  "layout.squares": "Cearnóga",
  "layout.regions": "Réigiúin",
  "layout.methods": "Modhanna",
  "layout.invented": "Taifid chumtha.",
  "layout.edition": "{title}, eagrán {edition}, {date}.",
  "layout.part-english": "Níl codanna den leathanach seo aistrithe fós; tá siad i mBéarla.",
  "layout.account-language": "{language}: teanga an chuntais seo.",
  "layout.page-language": "{language}: teanga an leathanaigh seo.",
  "layout.printed-foot": "{title}, eagrán {edition}.",
} satisfies SomeWordsOf<typeof en>;
