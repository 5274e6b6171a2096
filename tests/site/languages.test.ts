import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { HtmlValidate, StaticConfigLoader } from "html-validate";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CATALOGUES, ENGLISH, type Key } from "../../src/site/words/catalogue.ts";
import { hasMarks } from "../../src/site/words/fallback.ts";
import { type BuiltPage, builtPages, deadLinks, visibleText } from "../support/built-pages.ts";
import { type RenderedFixture, renderFixture } from "../support/rendered-fixture.ts";

const BASE = "/atlas/";
let built: RenderedFixture;
let pages: BuiltPage[];
beforeAll(async () => {
  built = await renderFixture({ taxa: 5, languages: ["fr", "ga"] }, BASE);
  pages = builtPages(built.folder);
});
afterAll(() => built?.remove());

const nameOf = ({ file }: BuiltPage) => path.relative(built.folder, file);
const pagesOf = (tag: string) => pages.filter((page) => nameOf(page).startsWith(`${tag}/`));
const pageOf = (name: string) => pages.find((page) => nameOf(page) === name)?.html ?? "";

/** A page without what it says to be of another language, nested or not. */
function ownLanguage(html: string): string {
  let [own, inside] = ["", 0];
  const open: boolean[] = [];
  for (const part of html.replace(/<(script|style)[\s\S]*?<\/\1>/g, "").split(/(<[^>]*>)/)) {
    const [, slash, name = ""] = /^<(\/?)(span|tspan|div)\b/.exec(part) ?? [];
    if (name !== "" && slash === "") {
      open.push(/ lang="en/.test(part));
      if (open.at(-1)) inside += 1;
    }
    if (inside === 0) own += part;
    if (slash === "/" && open.pop()) inside -= 1;
  }
  return own;
}

/** Everything that is read: text, and what stands for pictures and fields. */
function readText(html: string): string {
  const labels = [...html.matchAll(/ (?:aria-label|placeholder)="([^"]*)"/g)].map(([, label]) => label);
  return [visibleText(html), ...labels].join(" \n ").replaceAll("&#39;", "'");
}

/** Whole English messages that a reader of French would notice, and that French says otherwise. */
const TELLING = (Object.keys(ENGLISH) as Key[])
  .filter((key) => !/[{<*]/.test(ENGLISH[key]) && ENGLISH[key].length > 12 && CATALOGUES["fr"]?.[key] !== ENGLISH[key])
  .map((key) => [key, ENGLISH[key]] as const);

describe("an atlas of three languages", () => {
  it("has every page in each, and says which it is in", () => {
    const names = pages.map(nameOf).filter((name) => !/^(fr|ga)\//.test(name));
    for (const tag of ["fr", "ga"]) {
      expect(pagesOf(tag).map((page) => nameOf(page).slice(3))).toEqual(names);
      for (const page of pagesOf(tag)) expect(page.html, nameOf(page)).toContain(`<html lang="${tag}"`);
    }
    expect(pageOf("index.html")).toContain('<html lang="en-GB"');
    expect(built.warnings).toEqual([]);
  });

  it("leaves no mark in any file", () => {
    const texts = readdirSync(built.folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.(html|json|css|js|svg|xml|txt)$/.test(entry.name))
      .map((entry) => path.join(entry.parentPath, entry.name));
    const marked = (text: string) => hasMarks(text) || /[\uE001\uE002]/.test(text);
    expect(texts.length).toBeGreaterThan(pages.length);
    expect(
      texts
        .filter((file) => !file.endsWith(".js") && marked(readFileSync(file, "utf8")))
        .map((file) => path.relative(built.folder, file)),
    ).toEqual([]);
  });

  it("makes elements of the marks only where they may stand", async () => {
    const rules = {
      "close-order": "error",
      "element-permitted-content": "error",
      "element-permitted-parent": "error",
    } as const;
    const validator = new HtmlValidate(new StaticConfigLoader({ root: true, elements: ["html5"], rules }));
    for (const page of pagesOf("ga")) {
      const { results } = await validator.validateString(page.html);
      const aboutMarks = results
        .flatMap(({ messages }) => messages)
        .filter(({ ruleId, message }) => ruleId === "close-order" || /<(span|div|p)> element/.test(message));
      expect(
        aboutMarks.map(({ message, line, column }) => `${line}:${column} ${message}`),
        nameOf(page),
      ).toEqual([]);
    }
  });

  it("keeps links within the language, but for files that all share and the links to the others", () => {
    for (const page of pagesOf("fr")) {
      const others = page.html.replace(/<nav class="languages"[\s\S]*?<\/nav>/, "");
      const links = [...others.matchAll(/<a [^>]*href="([^"]+)"/g)].map(([, link = ""]) => link);
      expect(
        links.filter((link) => link.startsWith(BASE) && !/^\/atlas\/(fr|data|media|map)\//.test(link)),
        nameOf(page),
      ).toEqual([]);
    }
    const dead = deadLinks(built.folder, BASE, built.published);
    const inEnglish = (link: string) => link.replace(/^(fr|ga)\//, "").replace(/\/atlas\/(fr|ga)\//, "/atlas/");
    expect(dead.filter((link) => /^(fr|ga)\//.test(link) && !dead.includes(inEnglish(link)))).toEqual([]);
  });

  it("links each page to itself in the other languages", () => {
    expect(pageOf("fr/species/red-tailed/index.html")).toContain(
      '<a href="/atlas/ga/species/red-tailed/" lang="ga" hreflang="ga">Gaeilge</a>',
    );
    expect(pageOf("fr/species/red-tailed/index.html")).toContain('<a href="/atlas/species/red-tailed/" lang="en-GB"');
    expect(pageOf("fr/index.html")).not.toContain('rel="alternate"');
  });

  it("shows names, labels and accounts of the language, and others as what they are", () => {
    const own = pageOf("fr/species/red-tailed/index.html");
    expect(own).toContain("Bourdon des pierres</h1>");
    expect(own).toContain("Reines et ouvrières ont un pelage court");
    expect(own).toContain('<span lang="en">Red-tailed bumblebee</span>');
    expect(own).not.toContain("Cette fiche est en anglais");
    const other = pageOf("fr/species/buff-tailed/index.html");
    expect(other).toContain('<h1><span lang="en-GB">Buff-tailed bumblebee</span></h1>');
    expect(other).toContain("Cette fiche est en anglais.");
    expect(other).toContain('<div lang="en-GB"><p>Queens and workers have a short even coat');
    expect(pageOf("fr/about/index.html")).toContain("Cette page est en anglais.");
  });

  it("sets no space that can break before the signs that French sets one before, in its own words or a scheme's", () => {
    expect(pageOf("fr/species/red-tailed/index.html")).toContain("l’extrémité rouge\u00a0: d’une notice inventée");
    // Lexique des règles typographiques en usage à l’Imprimerie nationale: before : ; ? ! % and » , and after «.
    const found = pagesOf("fr").flatMap((page) =>
      (
        ownLanguage(page.html)
          .replace(/<[^>]*>/g, "")
          .replace(/&(?:#\d+|\w+);/g, "’")
          .match(/.{0,20}(?: [:;?!%»]|« |\p{L};(?!\p{L})).{0,9}/gu) ?? []
      ).map((text) => `${nameOf(page)}: ${text}`),
    );
    expect(found).toEqual([]);
  });

  it("says no whole English message on a French page", () => {
    expect(TELLING.length).toBeGreaterThan(100);
    const found = pagesOf("fr").flatMap((page) => {
      const text = readText(ownLanguage(page.html));
      return TELLING.filter(([, english]) => text.includes(english)).map(([key]) => `${nameOf(page)}: ${key}`);
    });
    expect(found).toEqual([]);
  });
});
