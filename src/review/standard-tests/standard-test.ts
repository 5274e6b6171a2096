import type { WrittenDateRules } from "../../dates/date-part.ts";
import type { Response } from "./response.ts";

/** A record as text by Darwin Core term, without prefix; a missing term and an empty one mean the same. */
export type TermTexts = Readonly<Record<string, string | undefined>>;

/** What a test may use beyond the record. */
export interface Parameters {
  /** The day taken as the present, YYYY-MM-DD: nothing reads a clock. */
  readonly today: string;
  /** What the source declares of dates not in ISO 8601. */
  readonly dates: WrittenDateRules;
  /** The list that values are compared with: null for none to be had, absent for the test's own where it has one. */
  readonly sourceAuthority?: ((value: string) => boolean) | null;
}

/**
 * One of the draft BDQ tests of TDWG (snapshot 2026-07-29, CC BY 4.0 where stated), known by its GUID: labels have
 * changed between versions. Its address is `https://rs.tdwg.org/bdqtest/terms/` and the GUID.
 */
export interface StandardTest {
  readonly guid: string;
  readonly label: string;
  readonly kind: "validation" | "issue" | "measure" | "amendment";
  /** Terms that are judged, or that an amendment may propose a value for. */
  readonly actsOn: readonly string[];
  /** Further terms that are read. */
  readonly consults: readonly string[];
  /** Those of all its terms of which nothing counts but whether they are filled. */
  readonly onlyWhetherFilled: readonly string[];
  /** Judges one record; never throws, whatever the text. */
  readonly run: (record: TermTexts, parameters: Parameters) => Response;
}

/**
 * A test from its parts; `consults` and `onlyWhetherFilled` are empty where not given, and a test is a validation.
 *
 * @example standardTest({ guid: "…", label: "…", actsOn: ["day"], run }).kind // "validation"
 */
export function standardTest(
  parts: Pick<StandardTest, "guid" | "label" | "actsOn" | "run"> & Partial<StandardTest>,
): StandardTest {
  return { kind: "validation", consults: [], onlyWhetherFilled: [], ...parts };
}

/**
 * True for a text that holds no character beyond U+0000 to U+0020, the draft's meaning of empty. "NULL", "NA" and a
 * no-break space are not empty.
 *
 * @example isEmpty(" \u000e") // true
 */
export function isEmpty(text: string | undefined): boolean {
  return text === undefined || !/[^\u0000-\u0020]/.test(text);
}

/**
 * A number in decimal notation with a point, blanks around it set aside; undefined for anything else.
 *
 * @example numberIn("-71.53") // -71.53
 */
export function numberIn(text: string | undefined): number | undefined {
  const plain = (text ?? "").replace(/^[\u0000-\u0020]+|[\u0000-\u0020]+$/g, "");
  return /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/.test(plain) ? Number(plain) : undefined;
}

/**
 * A whole number in figures, with or without a sign and leading zeros; undefined for anything else, "5.0" too.
 *
 * @example integerIn("05") // 5
 */
export function integerIn(text: string | undefined): number | undefined {
  const plain = (text ?? "").replace(/^[\u0000-\u0020]+|[\u0000-\u0020]+$/g, "");
  return /^[+-]?\d+$/.test(plain) ? Number(plain) : undefined;
}
