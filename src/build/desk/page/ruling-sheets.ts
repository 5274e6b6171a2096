import type { DeskAnswer } from "../../../review/desk/answers.ts";
import { element } from "./dom.ts";
import type { Rulings } from "./rulings.ts";
import { labelled, openSheet, options, taxonField, withChoices } from "./sheets.ts";

/** Reasons that are offered again. */
const MOST_REASONS = 12;

/** Corrects fields; a proposal stands in them already. */
export function correctSheet(rulings: Rulings, { correctable }: DeskAnswer): void {
  const record = rulings.shown();
  if (record === undefined) return;
  const proposed = fieldsOf(record.questions.find(({ proposal }) => proposal !== "")?.proposal ?? "");
  const cells = new Map(record.cells);
  const { name, place, date, kind } = record.said;
  const inShort = new Map(Object.entries({ scientificName: name, gridReference: place, eventDate: date, caste: kind }));
  const fields = correctable.map((field) =>
    element("input", { name: field, value: proposed.get(field) ?? "", autocomplete: "off" }),
  );
  openSheet(
    proposed.size > 0 ? "Correct as proposed" : "Correct",
    fields.map((field) =>
      labelled(field.name, field, `says ${cells.get(field.name) ?? (inShort.get(field.name) || "nothing")}`),
    ),
    () => {
      const filled = fields.filter(({ value }) => value.trim() !== "");
      if (filled.some(({ value }) => value.includes(";")))
        rulings.place.tell("A correction holds no semicolon: nothing was ruled.", true);
      else if (filled.length > 0)
        void rulings.rule("correct", filled.map((field) => `${field.name}=${field.value.trim()}`).join("; "));
    },
  );
}

/** "gridReference=SP50; eventDate=2011-07-12" as fields and values. */
function fieldsOf(proposal: string): Map<string, string> {
  return new Map(
    proposal.split(";").flatMap((part) => {
      const [field = "", ...rest] = part.split("=");
      return rest.length === 0 ? [] : [[field.trim(), rest.join("=").trim()] as const];
    }),
  );
}

/** Gives the record another name of the checklist. */
export function reidentifySheet(rulings: Rulings, { taxa }: DeskAnswer): void {
  if (rulings.shown() === undefined) return;
  const field = taxonField(taxa);
  openSheet("Re-identify as", [field.node], () => {
    const name = field.value().trim();
    if (name === "") rulings.place.tell("No name was chosen: nothing was ruled.");
    else void rulings.rule("re-identify", name);
  });
}

/** Chooses what is known of the identification: for the next ruling, or as a ruling of its own. */
export function identifySheet(rulings: Rulings, { identifications }: DeskAnswer): void {
  const alone = element("input", { type: "checkbox", name: "alone" });
  const take = (identification: string, isAlone: boolean) => {
    sheet.close();
    rulings.keep({ identification });
    if (isAlone || alone.checked) void rulings.rule("identify");
  };
  const words = "rule this alone, and nothing on the status (Shift and Enter)";
  const sheet = openSheet(
    "Identification",
    [options(identifications, take), element("label", { class: "check" }, alone, words)],
    () => rulings.keep({ identification: "" }),
    "None",
  );
}

/** Says which part of the body was seen. */
export function partSheet(rulings: Rulings, { parts }: DeskAnswer): void {
  const { field, list } = withChoices("part", rulings.draft.partSeen, parts);
  openSheet(
    "Part seen",
    [labelled("The identification rests on", field), list],
    () => rulings.keep({ partSeen: field.value.trim() }),
    "Keep",
  );
}

/** Says why. */
export function whySheet(rulings: Rulings, desk: DeskAnswer): void {
  const { field, list } = withChoices("why", rulings.draft.why, desk.reasons);
  const keep = () => {
    const why = field.value.trim();
    rulings.keep({ why });
    if (why !== "") desk.reasons = [why, ...desk.reasons.filter((other) => other !== why)].slice(0, MOST_REASONS);
  };
  openSheet("Why", [labelled("In words", field, "kept with the next ruling; name nobody"), list], keep, "Keep");
}
