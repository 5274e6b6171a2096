import { globSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type MethodCounts, methodStatements } from "../../src/publishing/methods.ts";
import { namesOfTaxa } from "../../src/publishing/taxon-names.ts";
import { readScheme } from "../../src/scheme/scheme.ts";
import { sectionHeading, statementHtml } from "../../src/site/components/methods/statements.ts";
import { CATALOGUES, ENGLISH } from "../../src/site/words/catalogue.ts";

/** Counts that are all one number. */
const counts = (n: number): MethodCounts => ({
  ...{ used: n, without_hectad: n, without_tetrad: n, records_at_half: n, tetrads_at_half: n, in_disguise: n },
  ...{ near_line: n, vague_dates: n, other_interval_end: n, aggregates: n, visits: n, visits_without_recorder: n },
});
/** Keys that the sources name, whatever the settings. */
const keys = globSync(["src/publishing/methods.ts", "src/publishing/methods/*.ts", "src/publishing/generalisations.ts"])
  .flatMap((file) => [...readFileSync(file, "utf8").matchAll(/\btold\(\s*"([\w-]+)"/g)])
  .map(([, key]) => `methods.${key}`);

describe("statements of the methods page", () => {
  it("have words in every complete catalogue, whatever the settings", () => {
    expect(keys.length).toBeGreaterThan(60);
    const claims = ["kept", "withdrawn", "rank", "untested"].map((claim) => `methods.claim-${claim}`);
    for (const key of [...keys, ...claims]) {
      expect(Object.hasOwn(ENGLISH, key), key).toBe(true);
      expect(Object.hasOwn(CATALOGUES["fr"] ?? {}, key), key).toBe(true);
    }
  });
  it.each(["content", "tests/golden/two-grids/input"])(
    "say every value they are given, for the scheme in %s",
    (folder) => {
      const scheme = readScheme(folder);
      for (const n of [0, 1, 12_345]) {
        const statements = methodStatements(scheme, counts(n), namesOfTaxa(scheme));
        for (const { section } of statements) expect(sectionHeading(section)).not.toBe("");
        for (const statement of statements) {
          const html = statementHtml(statement);
          expect(html, statement.key).not.toMatch(/[{}]|undefined|null|NaN/);
          for (const [name, value] of Object.entries(statement.values))
            if (typeof value === "number" && value > 12)
              expect(html, `${statement.key} ${name}`).toContain(value.toLocaleString("en-GB"));
        }
      }
    },
  );
});
