import { say } from "../../words/say.ts";

const KINDS = {
  field: "downloads.kind-field",
  photograph: "downloads.kind-photograph",
  specimen: "downloads.kind-specimen",
  literature: "downloads.kind-literature",
  card: "downloads.kind-card",
} as const;

/** What kind of records a source holds; its id where there are no words for it. @example kindWords("card") // => "card" */
export function kindWords(kind: string): string {
  return Object.hasOwn(KINDS, kind) ? say(KINDS[kind as keyof typeof KINDS]) : kind;
}
