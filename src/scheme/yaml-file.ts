import { isMap, isNode, isPair, isSeq, LineCounter, type Node, parseDocument } from "yaml";
import type { z } from "zod";
import { Mistake } from "../mistake.ts";

/**
 * Parses YAML 1.2 text by a contract. A value the contract refuses is reported at its own line and column.
 *
 * @param text the file's text
 * @param file the name shown in messages
 * @param contract a zod schema
 * @param firstLine line of the file the text starts at, for front matter; 1 without
 * @returns the value with all defaults filled in
 * @throws {Mistake} on a syntax error, or on the first value the contract refuses, naming how many more there are
 * @example parseYaml("to: 1989", "atlas.yaml", z.strictObject({ to: z.int() })) // => { to: 1989 }
 */
export function parseYaml<T>(text: string, file: string, contract: z.ZodType<T>, firstLine = 1): T {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, version: "1.2", prettyErrors: false });
  const broken = document.errors[0];
  if (broken !== undefined) {
    const { line, col } = lines.linePos(broken.pos[0]);
    throw new Mistake("the YAML", `cannot be read: ${broken.message}`, "mend the line", {
      file,
      line: line + firstLine - 1,
      column: col,
    });
  }
  const result = contract.safeParse(document.toJS() ?? {});
  if (result.success) return result.data;
  const [issue, ...more] = result.error.issues;
  if (issue === undefined) throw result.error;
  const { node, name } = findNode(document.contents, issue.path);
  const { line, col } = lines.linePos(node?.range?.[0] ?? 0);
  const shown = node === null ? "is missing" : `is ${showValue(node)}`;
  const rest = more.length === 0 ? "" : ` (and ${more.length} more after it)`;
  throw new Mistake(
    name,
    issue.code === "unrecognized_keys" ? `has ${issue.keys.join(", ")}` : shown,
    `${wayOut(issue)}${rest}`,
    {
      file,
      line: line + firstLine - 1,
      column: col,
    },
  );
}

function wayOut(issue: z.core.$ZodIssue): string {
  if (issue.code === "unrecognized_keys") return "no such setting: take it out or correct its name";
  if (issue.code === "invalid_value") return `write one of ${issue.values.map((value) => String(value)).join(", ")}`;
  if (issue.code === "invalid_type") return `write ${issue.expected === "string" ? "text" : issue.expected}`;
  return issue.message.charAt(0).toLowerCase() + issue.message.slice(1);
}

function showValue(node: Node): string {
  const value: unknown = node.toJSON();
  return typeof value === "object" && value !== null
    ? Array.isArray(value)
      ? "a list"
      : "a group of settings"
    : JSON.stringify(value);
}

/** The deepest node along the path, with the path in words; node null where the value itself is missing. */
function findNode(contents: unknown, path: readonly PropertyKey[]): { node: Node | null; name: string } {
  let node: unknown = contents;
  let name = "";
  for (const key of path) {
    name += typeof key === "number" ? `[${key}]` : `${name === "" ? "" : "."}${String(key)}`;
    if (isMap(node)) {
      const pair = node.items.find((item) => isPair(item) && String(item.key) === String(key));
      node = pair?.value ?? null;
    } else if (isSeq(node)) node = node.items[Number(key)] ?? null;
    else node = null;
  }
  return { node: isNode(node) ? node : null, name: name || "the file" };
}
