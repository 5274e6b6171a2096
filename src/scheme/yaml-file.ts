import { isMap, isNode, isPair, isScalar, isSeq, LineCounter, type Node, type ParsedNode, parseDocument } from "yaml";
import type { z } from "zod";
import { Mistake, type Whereabouts } from "../mistake.ts";
import { wayOut } from "./way-out.ts";

/** A YAML text as read, and where in its file each value stands. */
export interface ReadYaml<T> {
  value: T;
  /** Line and column of a value, or of the nearest group around it that is there. */
  at(path: readonly PropertyKey[]): Whereabouts;
}

/**
 * Reads YAML 1.2 text by a contract. A value the contract refuses is reported at its own line and column.
 *
 * @param text the file's text
 * @param file the name shown in messages
 * @param contract a zod schema
 * @param firstLine line of the file the text starts at, for front matter; 1 without
 * @returns the value with all defaults filled in, and a way to say where its parts stand
 * @throws {Mistake} on a syntax error, or on the first value the contract refuses, naming how many more there are
 * @example readYaml("to: 1989", "atlas.yaml", z.strictObject({ to: z.int() })).at(["to"]) // => { file: "atlas.yaml", line: 1, column: 5 }
 */
export function readYaml<T>(text: string, file: string, contract: z.ZodType<T>, firstLine = 1): ReadYaml<T> {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, version: "1.2", prettyErrors: false });
  const whereIs = (offset: number): Whereabouts => {
    const { line, col } = lines.linePos(offset);
    return { file, line: line + firstLine - 1, column: col };
  };
  const at = (path: readonly PropertyKey[]) => whereIs(nearestNode(document.contents, path).range?.[0] ?? 0);
  const [broken] = document.errors;
  if (broken !== undefined)
    throw new Mistake(
      "the YAML",
      `cannot be read: ${firstLineOf(broken.message)}`,
      "mend the line",
      whereIs(broken.pos[0]),
    );
  const result = contract.safeParse(plainValue(document, file) ?? {});
  if (result.success) return { value: result.data, at };
  const [issue, ...more] = result.error.issues;
  if (issue === undefined) throw result.error;
  throw refusal(document.contents, { issue, more: more.length, contract, whereIs });
}

/**
 * Reads YAML 1.2 text by a contract, for callers that ask no further where its values stand.
 *
 * @throws {Mistake} as `readYaml` does
 * @example parseYaml("to: 1989", "atlas.yaml", z.strictObject({ to: z.int() })) // => { to: 1989 }
 */
export function parseYaml<T>(text: string, file: string, contract: z.ZodType<T>, firstLine = 1): T {
  return readYaml(text, file, contract, firstLine).value;
}

function plainValue(document: ReturnType<typeof parseDocument>, file: string): unknown {
  try {
    return document.toJS();
  } catch (error) {
    throw new Mistake(
      "the YAML",
      `cannot be read: ${firstLineOf((error as Error).message)}`,
      "write the value out instead of an alias",
      { file },
    );
  }
}

function firstLineOf(message: string): string {
  return message.split("\n")[0] ?? message;
}

function refusal(
  contents: ParsedNode | Node | null,
  {
    issue,
    more,
    contract,
    whereIs,
  }: { issue: z.core.$ZodIssue; more: number; contract: z.ZodType; whereIs: (offset: number) => Whereabouts },
): Mistake {
  const [stray] = issue.code === "unrecognized_keys" ? issue.keys : [];
  const node = stray === undefined ? nodeAt(contents, issue.path) : keyNode(nodeAt(contents, issue.path), stray);
  const found = stray !== undefined ? `has “${stray}”` : node === null ? "is missing" : `is ${showValue(node)}`;
  const rest = more === 0 ? "" : ` (and ${more} more after it)`;
  const where = whereIs((node ?? nearestNode(contents, issue.path)).range?.[0] ?? 0);
  return new Mistake(nameOf(issue.path), found, `${wayOut(issue, contract, node === null)}${rest}`, where);
}

function showValue(node: Node): string {
  const value: unknown = node.toJSON();
  if (Array.isArray(value)) return value.length === 0 ? "an empty list" : `a list of ${value.length}`;
  return typeof value === "object" && value !== null ? "a group of settings" : JSON.stringify(value);
}

/** A path in words: periods[0].to. Lists count from 0, as the settings reference does. */
function nameOf(path: readonly PropertyKey[]): string {
  const name = path.map((key) => (typeof key === "number" ? `[${key}]` : `.${String(key)}`)).join("");
  return name.replace(/^\./, "") || "the file";
}

function nodeAt(contents: unknown, path: readonly PropertyKey[]): Node | null {
  let node: unknown = contents;
  for (const key of path) {
    if (isMap(node)) node = node.items.find((item) => isPair(item) && String(item.key) === String(key))?.value ?? null;
    else if (isSeq(node)) node = node.items[Number(key)] ?? null;
    else return null;
  }
  return isNode(node) ? node : null;
}

function nearestNode(contents: unknown, path: readonly PropertyKey[]): Pick<Node, "range"> {
  for (let length = path.length; length >= 0; length -= 1) {
    const node = nodeAt(contents, path.slice(0, length));
    if (node !== null) return node;
  }
  return {};
}

function keyNode(group: Node | null, key: string): Node | null {
  if (!isMap(group)) return null;
  const found = group.items.find((item) => String(item.key) === key)?.key;
  return isScalar(found) ? found : null;
}
