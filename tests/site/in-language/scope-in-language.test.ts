import { afterEach, expect, it, vi } from "vitest";
import type { AtlasFile } from "../../../src/publishing/contracts.ts";
import { scopeIn } from "../../../src/site/in-language/scope-in-language.ts";
import { markEnglish } from "../../../src/site/words/fallback.ts";

afterEach(() => vi.unstubAllEnvs());

it("says territories, castes and months in the language of the page, and marks what it does not know", () => {
  vi.stubEnv("ATLAS_LANGUAGE", "fr");
  const atlas = (territory: string, caste: string) =>
    ({ territories: [{ id: "ie", name: territory }], castes: [{ id: "queen", label: caste }] }) as AtlasFile;
  const both = { shown: atlas("Irlande", "Reine"), published: atlas("Ireland", "Queen") };
  const page = { first: "en", tag: "fr", words: undefined };
  expect(scopeIn(page, "Ireland; queen, not stated; May, June", both)).toBe(
    "Irlande\u00a0; reine, non indiqué\u00a0; mai, juin",
  );
  expect(scopeIn(page, "Mars", both)).toBe(markEnglish("Mars"));
  expect(scopeIn(page, "", both)).toBe("");
});
