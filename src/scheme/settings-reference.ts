import { z } from "zod";
import { Settings } from "./settings.ts";

interface Described {
  type?: string | string[];
  description?: string;
  default?: unknown;
  enum?: unknown[];
  const?: unknown;
  anyOf?: Described[];
  properties?: Record<string, Described>;
  required?: string[];
  items?: Described;
}

/**
 * The reference of `atlas.yaml` as Markdown, made from its contract: every setting with its kind, default and meaning.
 *
 * @example settingsReference().includes("| `title` | text") // => true
 */
export function settingsReference(): string {
  const schema = z.toJSONSchema(Settings, { io: "input", unrepresentable: "any" }) as Described;
  return `# Settings of atlas.yaml\n\n| setting | kind | default | meaning |\n|---|---|---|---|\n${rowsOf(schema, "").join("\n")}\n`;
}

function rowsOf(schema: Described, prefix: string): string[] {
  return Object.entries(schema.properties ?? {}).flatMap(([name, setting]) => {
    const path = `${prefix}${name}`;
    const required = schema.required?.includes(name) === true;
    const fallback = required
      ? "needed"
      : setting.default === undefined
        ? "none"
        : `\`${JSON.stringify(setting.default)}\``;
    const inner =
      setting.type === "array" && setting.items?.properties !== undefined
        ? rowsOf(setting.items, `${path}[].`)
        : rowsOf(setting, `${path}.`);
    return [`| \`${path}\` | ${kindOf(setting)} | ${fallback} | ${setting.description ?? ""} |`, ...inner];
  });
}

const KINDS: Record<string, string> = {
  string: "text",
  integer: "whole number",
  number: "number",
  boolean: "true or false",
  array: "list",
  object: "group",
  null: "nothing",
};

function kindOf(setting: Described): string {
  if (setting.enum !== undefined) return setting.enum.map((value) => `\`${String(value)}\``).join(", ");
  if (setting.const !== undefined) return `\`${String(setting.const)}\``;
  if (setting.anyOf !== undefined) return setting.anyOf.map(kindOf).join(" or ");
  return KINDS[String(setting.type)] ?? "text";
}
