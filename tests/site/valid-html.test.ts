/** The pages as HTML: by the rules of the standard, and with every link leading somewhere. */
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { HtmlValidate, StaticConfigLoader } from "html-validate";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { deadLinks } from "../support/built-pages.ts";
import { PAGE_TYPES } from "../support/page-types.ts";
import { type RenderedFixture, renderFixture } from "../support/rendered-fixture.ts";

/** Of the HTML standard, as html-validate has it: no rule is switched off. */
const STANDARD = ["html-validate:standard"];
const NOT_FOUND = "nowhere/";

let site: RenderedFixture;
beforeAll(async () => {
  site = await renderFixture({ taxa: 6, regions: true, languages: ["fr", "ga"] }, "/");
}, 300_000);
afterAll(() => site?.remove());

const files = [...new Set(PAGE_TYPES.map((type) => type.path.replace(/[?#].*/, "")))].map((address) =>
  address === NOT_FOUND ? "404.html" : `${address}index.html`,
);

describe("a page of each type", () => {
  it.each(["", "fr", "ga"])(
    "is valid HTML, in the language of the folder %j",
    async (language) => {
      const validator = new HtmlValidate(
        new StaticConfigLoader({ root: true, elements: ["html5"], extends: STANDARD }),
      );
      const faults: string[] = [];
      for (const name of files) {
        const file = path.join(site.folder, language, name);
        if (!existsSync(file)) faults.push(`${name} is not there`);
        else {
          const { results } = await validator.validateString(readFileSync(file, "utf8"));
          const messages = results.flatMap((result) => result.messages);
          faults.push(
            ...messages.map(({ ruleId, message, line, column }) => `${name}:${line}:${column} ${message} (${ruleId})`),
          );
        }
      }
      expect(faults).toEqual([]);
    },
    120_000,
  );
});

describe("links", () => {
  it("lead to a page and a place that are there, in every language", () => {
    expect(deadLinks(site.folder, "/", site.published)).toEqual([]);
  });
});
