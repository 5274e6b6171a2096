import type { SomeWordsOf } from "../catalogue.ts";
import type en from "../en/body.ts";

export default {
  "body.part.face": "aghaidh",
  "body.part.eyes": "súile",
  "body.part.collar": "coiléar",
  "body.part.wings": "sciatháin",
  "body.state.black": "dubh",
  "body.state.yellow": "buí",
  "body.state.white": "bán",
  "body.state.red": "dearg",
  "body.state.orange": "oráiste",
  "body.state.brown": "donn",
  "body.state.grey": "liath",
  "body.state.blue": "gorm",
  "body.state.green": "glas",
  "body.state.long": "fada",
  "body.state.short": "gearr",
} satisfies SomeWordsOf<typeof en>;
