import { z } from "zod";
import { editDistance } from "../names/name-text.ts";

/** A setting as JSON Schema has it, as far as it is asked here. */
interface Described {
  description?: string;
  type?: string | string[];
  format?: string;
  enum?: unknown[];
  properties?: Record<string, Described>;
  propertyNames?: Described;
  items?: Described;
  prefixItems?: Described[];
  anyOf?: Described[];
}

const KINDS: Readonly<Record<string, string>> = {
  string: "text",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list, as in [a, b]",
  tuple: "a list, as in [a, b]",
  object: "a group of settings, each as key: value",
  record: "a group of settings, each as key: value",
  null: "null",
};

/**
 * What to write instead of a value that a contract refuses, with the setting's meaning where one is missing.
 *
 * @param issue as zod gives it
 * @param contract the whole contract the issue's path leads into
 * @param missing true where there is no value at all
 * @example wayOut({ code: "invalid_type", expected: "int", path: ["to"], … }, contract, true) // => "write a whole number: last year, inclusive"
 */
export function wayOut(issue: z.core.$ZodIssue, contract: z.ZodType, missing: boolean): string {
  const setting = settingAt(contract, issue.path);
  const meaning = missing && setting?.description !== undefined ? `: ${setting.description}` : "";
  return `${whatToWrite(issue, setting)}${meaning}`;
}

function whatToWrite(issue: z.core.$ZodIssue, setting: Described | undefined): string {
  switch (issue.code) {
    case "unrecognized_keys":
      return unknownKeys(issue.keys, setting);
    case "invalid_value":
      return `write ${issue.values.length > 1 ? "one of " : ""}${issue.values.map((value) => (value === "" ? '""' : String(value))).join(", ")}`;
    case "invalid_type":
      return `write ${issue.expected === "number" && isWhole(setting) ? kindOf("int") : kindOf(issue.expected)}`;
    case "invalid_union":
      return inUnion(issue.errors);
    case "too_small":
      return issue.origin === "number"
        ? atLeast(issue)
        : issue.origin === "string"
          ? "write something"
          : `give ${count(issue.minimum, "at least")}`;
    case "too_big":
      return issue.origin === "number"
        ? `write a number up to ${issue.maximum}`
        : `give ${count(issue.maximum, "at most")}`;
    case "invalid_format":
      return issue.format === "date"
        ? "write a date that exists as year-month-day, such as 2025-03-01"
        : said(issue.message);
    default:
      return said(issue.message);
  }
}

function isWhole(setting: Described | undefined): boolean {
  return [setting, ...(setting?.anyOf ?? [])].some((one) => one?.type === "integer");
}

function kindOf(expected: string): string {
  return KINDS[expected] ?? expected;
}

function atLeast({ minimum, inclusive }: { minimum: number | bigint; inclusive?: boolean | undefined }): string {
  return inclusive === false ? `write a number above ${minimum}` : `write a number from ${minimum} on`;
}

function count(number: number | bigint, bound: string): string {
  return `${bound} ${number} in the list`;
}

/** A value of several kinds: what the last kind but the wrong ones says, else all kinds. */
function inUnion(errors: readonly (readonly z.core.$ZodIssue[])[]): string {
  const [only] = errors.flatMap((issues) => issues.filter((issue) => issue.code !== "invalid_type"));
  if (only !== undefined) return said(only.message);
  const kinds = errors.flatMap((issues) =>
    issues.flatMap((issue) => (issue.code === "invalid_type" ? kindOf(issue.expected) : [])),
  );
  return `write ${[...new Set(kinds)].join(", or ")}`;
}

function said(message: string): string {
  return message.charAt(0).toLowerCase() + message.slice(1);
}

function unknownKeys(keys: readonly string[], setting: Described | undefined): string {
  const known = [...Object.keys(setting?.properties ?? {}), ...(setting?.propertyNames?.enum ?? []).map(String)];
  const [key = ""] = keys;
  const near = known.find((name) => editDistance(name.toLowerCase(), key.toLowerCase(), 2) <= 2);
  if (near !== undefined) return `there is no such setting; did you mean ${near}?`;
  return known.length === 0
    ? "there is no such setting; take it out"
    : `there is no such setting; take it out, or write one of ${known.join(", ")}`;
}

/** The setting a path leads to; undefined where the contract has none. */
function settingAt(contract: z.ZodType, path: readonly PropertyKey[]): Described | undefined {
  let setting: Described | undefined = z.toJSONSchema(contract, { io: "input", unrepresentable: "any" }) as Described;
  for (const key of path) {
    const lists: Described[] = [setting, ...(setting.anyOf ?? [])];
    setting =
      typeof key === "number"
        ? lists.map((one) => one.prefixItems?.[key] ?? one.items).find((one) => one !== undefined)
        : lists.map((one) => one.properties?.[String(key)]).find((one) => one !== undefined);
    if (setting === undefined) return undefined;
  }
  return setting;
}
