import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { contrast } from "../../../../src/site/components/design/contrast.ts";
import { coloursOf } from "../../../../src/site/components/design/tokens.ts";

it("reads colours of light and dark, and keeps what dark does not change", () => {
  const colours = coloursOf(":root{--ink:#111;--rule:#ccc}@media (prefers-color-scheme: dark){:root{--ink:#eee}}");
  expect(colours.get("ink")).toEqual({ light: "#111", dark: "#eee" });
  expect(colours.get("rule")).toEqual({ light: "#ccc", dark: "#ccc" });
});

describe("the tokens", () => {
  const colours = coloursOf(readFileSync("src/site/styles/tokens.css", "utf8"));
  const least = (name: string, ground: string) =>
    Math.min(
      ...(["light", "dark"] as const).map((scheme) =>
        contrast(colours.get(name)?.[scheme] ?? "#fff", colours.get(ground)?.[scheme] ?? "#fff"),
      ),
    );

  // WCAG 2.2, 1.4.3 (text) and 1.4.11 (graphical objects).
  it("keep 4.5 to 1 for text and 3 to 1 for marks, in light and in dark", () => {
    for (const ground of ["paper", "leaf"])
      for (const name of ["ink", "ink-2", "ink-3", "accent"]) expect(least(name, ground)).toBeGreaterThanOrEqual(4.5);
    for (const name of ["both", "new", "gone", "part", "coast", "edge"])
      expect(least(name, "leaf")).toBeGreaterThanOrEqual(3);
  });
});
