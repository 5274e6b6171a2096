import type { SomeWordsOf } from "../catalogue.ts";
import type en from "../en/text.ts";

/** Parts of sentences wait until their sentences are there: a page never says half a sentence in each language. */
export default {
  "text.percent": "{number} %",
  "text.kilobytes": "{number} kB",
  "text.megabytes": "{number} MB",
  "text.date": "{day} {month} {year}",
} satisfies SomeWordsOf<typeof en>;
