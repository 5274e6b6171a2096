import { findingTitle } from "../../records/finding-titles.ts";
import { forOthers, isListed } from "../../review/for-others.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { suppressedNames } from "../../scheme/suppressed-names.ts";
import type { PackQuestion } from "./pack-page.ts";

/** A question with what a pack needs to know of its record and leaves out. */
export interface Question extends PackQuestion {
  proposal: string;
  hectad: string | null;
}

/**
 * A question as a pack carries it: to somebody who may pass it on, and who may have records of their own.
 *
 * - Of a taxon on the sensitive list the 10 km square stands for the place, and nothing where a record of it is withheld;
 *   locality and remarks are left out, and so is how a question arose.
 * - No other record's file and nobody's opinion is quoted.
 * - Recorders are named only where that is asked for, and never those on the suppressed list; a locality or remark that
 *   holds such a name is left out whole.
 *
 * @param named whether recorders are named
 */
export function carried<Asked extends Question>(scheme: Scheme, question: Asked, named: boolean): Asked {
  const { taxon_id, check_name, recorded_by } = question;
  const own = named ? undefined : suppressedNames([recorded_by]);
  const holdsName = (text: string) => scheme.suppressed.isSuppressed(text) || own?.isSuppressed(text) === true;
  const told = { ...question, ...forOthers(scheme, check_name, taxon_id, question) };
  const isSensitive = isListed(scheme, taxon_id);
  return {
    ...told,
    said_place: isSensitive ? coarsePlace(scheme, question) : question.said_place,
    locality: isSensitive || holdsName(question.locality) ? "" : question.locality,
    remarks: isSensitive || holdsName(question.remarks) ? "" : question.remarks,
    message: holdsName(told.message) ? findingTitle(check_name) : told.message,
    recorded_by: named && !scheme.suppressed.isSuppressed(recorded_by) ? recorded_by : "",
  };
}

function coarsePlace(scheme: Scheme, { taxon_id, hectad }: Question): string {
  return isListed(scheme, taxon_id, "withheld") ? "" : (hectad ?? "");
}
