/**
 * What became of a test: it ran, it could not for want of a value in the record (internal) or of a list to compare with
 * (external), or, of an amendment, whether it proposes to change, to fill in, or nothing.
 */
export type Status =
  | "RUN_HAS_RESULT"
  | "INTERNAL_PREREQUISITES_NOT_MET"
  | "EXTERNAL_PREREQUISITES_NOT_MET"
  | "AMENDED"
  | "FILLED_IN"
  | "NOT_AMENDED";

/**
 * A test's answer about one record, after the response model of the draft BDQ tests of TDWG (snapshot 2026-07-29,
 * CC BY 4.0 where stated). Changes are proposals: nothing here ever alters a record.
 */
export interface Response {
  readonly status: Status;
  /** COMPLIANT or NOT_COMPLIANT of a validation, POTENTIAL_ISSUE or NOT_ISSUE of an issue, the value of a measure. */
  readonly result: string;
  /** Why, in plain words. */
  readonly comment: string;
  /** Proposed values by Darwin Core term; only of AMENDED and FILLED_IN, and never empty. */
  readonly changes?: Readonly<Record<string, string>>;
}

/**
 * The answer of a test that ran.
 *
 * @example hasResult("86400", "one day") // { status: "RUN_HAS_RESULT", result: "86400", comment: "one day" }
 */
export function hasResult(result: string, comment: string): Response {
  return { status: "RUN_HAS_RESULT", result, comment };
}

/**
 * The answer of a validation that ran.
 *
 * @param comment what was looked at, worded to hold whichever way it went
 * @example complies(false, "month is 1 to 12").result // "NOT_COMPLIANT"
 */
export function complies(isCompliant: boolean, comment: string): Response {
  return hasResult(isCompliant ? "COMPLIANT" : "NOT_COMPLIANT", `${isCompliant ? "true" : "not true"}: ${comment}`);
}

/**
 * The answer of a test that needs a value the record does not have.
 *
 * @example lacks("eventDate is empty").status // "INTERNAL_PREREQUISITES_NOT_MET"
 */
export function lacks(comment: string): Response {
  return { status: "INTERNAL_PREREQUISITES_NOT_MET", result: "", comment };
}

/**
 * The answer of a test without the list it compares with.
 *
 * @example noAuthority().status // "EXTERNAL_PREREQUISITES_NOT_MET"
 */
export function noAuthority(comment = "there is no list to compare with"): Response {
  return { status: "EXTERNAL_PREREQUISITES_NOT_MET", result: "", comment };
}

/**
 * The answer of an amendment with nothing to propose.
 *
 * @example unchanged("month is already a number").status // "NOT_AMENDED"
 */
export function unchanged(comment: string): Response {
  return { status: "NOT_AMENDED", result: "", comment };
}

/**
 * The answer of an amendment that proposes values.
 *
 * @param status FILLED_IN where only empty terms get a value, AMENDED where a value would change
 * @example proposes("AMENDED", { month: "4" }, "read as a Roman numeral").changes // { month: "4" }
 */
export function proposes(
  status: "AMENDED" | "FILLED_IN",
  changes: Readonly<Record<string, string>>,
  comment: string,
): Response {
  return { status, result: "", comment, changes };
}
