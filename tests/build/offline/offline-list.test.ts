import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { offlineList } from "../../../src/build/offline/offline-list.ts";

let atlas: string;
const put = (path: string, text = path) => {
  mkdirSync(dirname(join(atlas, path)), { recursive: true });
  writeFileSync(join(atlas, path), text);
};
const paths = (language = "") => offlineList(atlas, language, "1").files.map(([path]) => path);

beforeAll(() => {
  atlas = mkdtempSync(join(tmpdir(), "atlaswright-offline-"));
  for (const page of [
    "",
    "offline/",
    "species/",
    "species/garden/",
    "species/by-name/",
    "squares/nz27/",
    "fr/",
    "fr/species/jardin/",
  ])
    put(`${page}index.html`);
  for (const file of [
    "fonts/text.woff2",
    "fonts/OFL.txt",
    "_astro/a.css",
    "scheme.css",
    "identify/places/british-4-5.json",
    "data/1/taxa.csv",
  ])
    put(file);
  put("_astro/map.js", "x".repeat(200_001));
});
afterAll(() => rmSync(atlas, { recursive: true, force: true }));

describe("what a language keeps on a device", () => {
  it("is the pages of the field, the accounts, and what these need, each as it is asked for", () => {
    expect(paths()).toEqual([
      "",
      "_astro/a.css",
      "fonts/text.woff2",
      "identify/places/british-4-5.json",
      "offline/",
      "scheme.css",
      "species/",
      "species/garden/",
    ]);
  });
  it("is a further language's own, with what all languages share", () => {
    expect(paths("fr")).toEqual(["fr/", "fr/species/jardin/", "identify/places/british-4-5.json"]);
  });
  it("changes its hash with the content alone", () => {
    const hash = () => new Map(offlineList(atlas, "", "1").files).get("species/garden/");
    const before = hash();
    expect(hash()).toBe(before);
    put("species/garden/index.html", "changed");
    expect(hash()).not.toBe(before);
  });
  it("leaves the accounts of a large atlas to be kept when they are visited", () => {
    for (let index = 0; index < 300; index++) put(`species/s${index}/index.html`);
    expect(paths().filter((path) => /^species\/./.test(path))).toEqual([]);
  });
});
