import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { readScheme } from "../../src/scheme/scheme.ts";
import { Settings } from "../../src/scheme/settings.ts";
import { checkTaxaOfChecks } from "../../src/scheme/taxa-of-checks.ts";
import { mistakeOf } from "./mistakes.ts";

const { settings, taxa } = readScheme(fileURLToPath(new URL("../../content", import.meta.url)));

function messageOf(checks: object): string {
  const changed = Settings.parse({ ...settings, checks });
  return mistakeOf(() => checkTaxaOfChecks(changed, taxa, (path) => ({ file: "atlas.yaml", field: path.join(".") })));
}

const NEEDED = { taxa: ["invented-humilis"], castes: ["queen"], territories: ["britain"], least: "photograph" };

it("takes taxa, castes and territories that are there", () => {
  expect(messageOf({ unexpected: { all_year: ["invented-terrestris"] }, evidence: { needed: [NEEDED] } })).toBe(
    "no mistake",
  );
});

it.each<[string, object]>([
  ["“invented-terestris” is not in checklist.csv", { unexpected: { all_year: ["invented-terestris"] } }],
  ["“humilis” is not in checklist.csv", { evidence: { needed: [{ ...NEEDED, taxa: ["humilis"] }] } }],
  ["“wales” is no territory", { evidence: { needed: [{ ...NEEDED, territories: ["wales"] }] } }],
  ["“soldier” is no caste of atlas.yaml", { evidence: { needed: [{ ...NEEDED, castes: ["soldier"] }] } }],
])("refuses what is not: %s", (message, checks) => {
  expect(messageOf(checks)).toContain(message);
});
