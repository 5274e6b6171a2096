import { z } from "zod";
import { isDateRefusal } from "../../dates/interval.ts";
import { readDate } from "../../dates/read-date.ts";
import { isRefusal } from "../../grids/grid.ts";
import { Mistake } from "../../mistake.ts";
import { readCasteText } from "../../names/caste-text.ts";
import { isNameRefusal } from "../../names/match-name.ts";
import { placingTerritories } from "../../records/record-stage.ts";
import { statedNumber } from "../../records/stated-number.ts";
import { casteVocabulary } from "../../scheme/caste-vocabulary.ts";
import { type Correctable, IDENTIFICATIONS, RULINGS } from "../../scheme/decisions-file.ts";
import { correctionsIn } from "../../scheme/decisions-in-force.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import type { RulingRequest } from "./answers.ts";

const text = (most: number) => z.string().max(most).default("");

export const FilterBody = z.strictObject({
  check: text(200),
  severity: z.enum(["", "blocks", "ask"]).default(""),
  source: text(200),
  taxon: text(200),
  region: text(200),
  recorder: text(500),
  from: text(4),
  to: text(4),
  text: text(500),
  show: z.enum(["", "open"]).default(""),
});

/** What the page may send: one ruling, on one record or on the open records of a look. */
export const RulingBody = z
  .strictObject({
    ruling: z.enum(RULINGS).exclude(["withdraw"]),
    value: text(2000),
    identification: z.enum(IDENTIFICATIONS).default(""),
    partSeen: text(200),
    why: text(2000),
    who: text(200),
    check: text(200),
    record: z.int().positive().nullable().default(null),
    group: z
      .strictObject({
        look: z.int().positive(),
        filter: FilterBody,
        others: z.boolean(),
        count: z.int().positive(),
        mark: z.string().max(100),
      })
      .nullable()
      .default(null),
  })
  .refine(({ record, group }) => (record === null) !== (group === null), "name either a record or a look");

/**
 * Refuses a ruling whose value would not be read: a name that is not in the checklist, a reference of no grid of the
 * atlas, a date or caste that is none.
 *
 * @throws {Mistake} that says what, and the way out
 */
export function refuseUnread(
  { ruling, value, identification }: Pick<RulingRequest, "ruling" | "value" | "identification">,
  scheme: Scheme,
): void {
  if (ruling === "re-identify") readAsName(value, scheme);
  if (ruling === "identify" && identification === "")
    throw new Mistake("identify", "says nothing", "choose what is known of the identification");
  if ((ruling === "same as" || ruling === "not the same") && value === "")
    throw new Mistake(ruling, "names no other record", "name its key");
  if (ruling !== "correct") return;
  for (const [field, text] of Object.entries(correctionsIn({ value }))) READ_AS[field as Correctable](text, scheme);
}

const READ_AS: Readonly<Record<Correctable, (value: string, scheme: Scheme) => void>> = {
  scientificName: readAsName,
  gridReference(value, scheme) {
    const answers = placingTerritories(scheme).map(({ grid }) => grid.parse(value));
    const refused = answers.find((answer) => isRefusal(answer));
    if (!answers.some((answer) => !isRefusal(answer)) && refused !== undefined && isRefusal(refused))
      throw new Mistake("gridReference", `is ${value}: ${refused.refused}`, refused.wayOut);
  },
  decimalLatitude: (value) => refuseDegrees("decimalLatitude", value, 90),
  decimalLongitude: (value) => refuseDegrees("decimalLongitude", value, 180),
  eventDate(value, { settings }) {
    const answer = readDate({ eventDate: value }, { intervalEnd: settings.dates.interval_end, format: "iso" });
    if (isDateRefusal(answer)) throw new Mistake("eventDate", `is ${value}, which is no date`, "write year-month-day");
  },
  caste(value, scheme) {
    const { problems } = readCasteText(value, casteVocabulary(scheme.settings));
    if (problems.length > 0)
      throw new Mistake(
        "caste",
        `is ${value}`,
        `write one of ${scheme.settings.castes.map(({ id }) => id).join(", ")}`,
      );
  },
};

function refuseDegrees(field: string, value: string, most: number): void {
  const degrees = statedNumber(value);
  if (degrees === undefined || Math.abs(degrees) > most)
    throw new Mistake(field, `is ${value}`, `write decimal degrees from −${most} to ${most}`);
}

function readAsName(value: string, { checklist }: Scheme): void {
  const match = checklist.match(value);
  if (isNameRefusal(match)) throw new Mistake("the name", `is ${value}: ${match.refused}`, match.wayOut);
}
