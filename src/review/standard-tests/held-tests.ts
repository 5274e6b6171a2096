import { RECORD_FIELDS } from "../../scheme/settings.ts";
import { STANDARD_TESTS } from "./index.ts";
import type { StandardTest } from "./standard-test.ts";

/** Tests that look at the same columns in the same way, so that one query gives the distinct texts for all of them. */
export interface TestGroup {
  readonly tests: readonly StandardTest[];
  readonly columns: readonly TestColumn[];
}

/** A column of `raw_records`, and whether only its being filled counts. */
export interface TestColumn {
  readonly term: string;
  readonly onlyWhetherFilled: boolean;
}

const FIELDS: ReadonlySet<string> = new Set(RECORD_FIELDS);

/**
 * The tests whose terms a record has here, in groups. Terms it does not have count as empty. A test that asks for any
 * one of many terms needs one of them, every other test all it acts on; the rest are not held and left out. A test joins
 * a wider group where there is one; an amendment does not, so that each of its proposals stands once.
 */
export function heldTests(tests: readonly StandardTest[] = STANDARD_TESTS): TestGroup[] {
  const groups: { tests: StandardTest[]; columns: readonly TestColumn[] }[] = [];
  const held = tests.filter(isHeld).map((test) => ({ test, columns: columnsOf(test) }));
  const filled = held.filter(({ test }) => asksOnlyWhetherFilled(test));
  const others = held.filter(({ test }) => !asksOnlyWhetherFilled(test));
  for (const { test, columns } of others.toSorted((a, b) => b.columns.length - a.columns.length)) {
    const wider = groups.find((group) =>
      test.kind === "amendment" ? sameColumns(columns, group.columns) : areAmong(columns, group.columns),
    );
    if (wider === undefined) groups.push({ tests: [test], columns });
    else wider.tests.push(test);
  }
  const filledColumns = new Map(filled.flatMap(({ columns }) => columns).map((column) => [column.term, column]));
  return [{ tests: filled.map(({ test }) => test), columns: [...filledColumns.values()] }, ...groups];
}

/** True for a test that `heldTests` gives. */
export function isHeld(test: StandardTest): boolean {
  const has = (term: string) => FIELDS.has(term);
  return asksOnlyWhetherFilled(test) ? test.actsOn.some(has) : test.actsOn.every(has);
}

/** The columns a test looks at, in the order of the record's fields. */
export function columnsOf(test: StandardTest): TestColumn[] {
  const terms = new Set([...test.actsOn, ...test.consults]);
  return RECORD_FIELDS.filter((field) => terms.has(field)).map((term) => ({
    term,
    onlyWhetherFilled: test.onlyWhetherFilled.includes(term),
  }));
}

/**
 * A column as the tests see it: its text, or "x" or nothing where only its being filled counts. Needs the macro `filled`.
 *
 * @example columnSql({ term: "day", onlyWhetherFilled: true }) // 'filled("day") AS "day"'
 */
export function columnSql({ term, onlyWhetherFilled }: TestColumn): string {
  return onlyWhetherFilled ? `filled("${term}") AS "${term}"` : `"${term}"`;
}

function asksOnlyWhetherFilled({ actsOn, consults, onlyWhetherFilled }: StandardTest): boolean {
  return [...actsOn, ...consults].every((term) => onlyWhetherFilled.includes(term));
}

function areAmong(columns: readonly TestColumn[], wider: readonly TestColumn[]): boolean {
  const names = wider.map(columnSql);
  return columns.every((column) => names.includes(columnSql(column)));
}

function sameColumns(columns: readonly TestColumn[], others: readonly TestColumn[]): boolean {
  return areAmong(columns, others) && areAmong(others, columns);
}
