import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import Papa from "papaparse";
import type { Response } from "../../../src/review/standard-tests/response.ts";
import type { Parameters, StandardTest } from "../../../src/review/standard-tests/standard-test.ts";

/** One case: a record, and what a test is to answer. */
export interface PublishedCase {
  readonly line: number;
  readonly guid: string;
  readonly status: string;
  readonly result: string;
  /** Terms that are filled, without prefix. */
  readonly record: Readonly<Record<string, string>>;
  /** True where the case names a service that does not exist as the list to compare with. */
  readonly withoutAuthority?: boolean;
}

const FOLDER = fileURLToPath(new URL("../../../../shared/bdq/", import.meta.url));
const FILES = ["TG2_test_validation_data.csv", "TG2_test_validation_data_nonprintingchars.csv"];

/** Whether the published tables stand beside the checkout. */
export const PUBLISHED_TABLES_ARE_HERE = FILES.every((file) => existsSync(FOLDER + file));

/** Every case of both tables; NUL and other control characters stand in it as published. */
export function publishedCases(): PublishedCase[] {
  return FILES.flatMap((file) => {
    const { data } = Papa.parse<Record<string, string>>(readFileSync(FOLDER + file, "utf8"), {
      header: true,
      skipEmptyLines: true,
    });
    return data.map(caseOf);
  });
}

function caseOf(row: Record<string, string>): PublishedCase {
  const inputs = Object.entries(row).filter(([column, text]) => /^(?:dwc|dc|dcterms):/.test(column) && text !== "");
  return {
    line: Number(row["LineNumber"]),
    guid: row["GUID"] ?? "",
    status: row["Response.status"] ?? "",
    result: row["Response.result"] ?? "",
    record: Object.fromEntries(inputs.map(([column, text]) => [withoutPrefix(column), text])),
    ...(row["bdqval:sourceAuthority"]?.includes("invalid") === true ? { withoutAuthority: true } : {}),
  };
}

/** Names of the cases that a list of names would hold, since the draft's own list is a service. */
const KNOWN_NAMES = new Set(["Eucalyptus gunnii", "Eucalyptus camaldulensis"]);

/** A test's answer to a case: the day is fixed, and "juni" is known as a month, which one case needs. */
export function answer(test: StandardTest, { record, withoutAuthority }: PublishedCase): Response {
  const parameters: Parameters = { today: "2026-11-25", dates: { format: "iso", words: { months: { juni: 6 } } } };
  if (withoutAuthority === true) return test.run(record, { ...parameters, sourceAuthority: null });
  const needsNames = test.label === "VALIDATION_SCIENTIFICNAME_FOUND";
  return test.run(
    record,
    needsNames ? { ...parameters, sourceAuthority: (name) => KNOWN_NAMES.has(name) } : parameters,
  );
}

/** True where status and result, or of an amendment the proposed values, are those of the case. */
export function agrees(response: Response, { status, result }: PublishedCase): boolean {
  if (response.status !== status) return false;
  if (response.changes === undefined) return response.result === result;
  const expected = Object.entries(JSON.parse(result) as Record<string, string>);
  return (
    sorted(expected.map(([term, value]) => [withoutPrefix(term), value])) === sorted(Object.entries(response.changes))
  );
}

function sorted(entries: readonly (readonly [string, string])[]): string {
  return JSON.stringify(entries.map((entry) => [...entry]).sort());
}

function withoutPrefix(term: string): string {
  return term.replace(/^\w+:/, "");
}
