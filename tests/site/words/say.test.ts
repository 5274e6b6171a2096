import { afterEach, describe, expect, it, vi } from "vitest";
import { showMarks } from "../../../src/site/words/fallback.ts";
import { isComplete, language, messagesFor, say, sayHtml } from "../../../src/site/words/say.ts";

afterEach(() => vi.unstubAllEnvs());
const inLanguage = (tag: string) => vi.stubEnv("ATLAS_LANGUAGE", tag);

describe("words of the pages", () => {
  it("are English where the build names no language", () => {
    expect([language(), say("layout.species")]).toEqual(["en-GB", "Species"]);
  });
  it("are those of the build's language, whatever its region", () => {
    inLanguage("fr-BE");
    expect(say("layout.species")).toBe("Espèces");
  });
  it("are English and marked where a language lacks them", () => {
    inLanguage("ga");
    expect(isComplete("ga")).toBe(false);
    expect(say("layout.species")).toBe("Speicis");
    expect(showMarks(`<p>${say("layout.own-host")}</p>`)).toContain('<span lang="en">Nothing on this page');
  });
  it("escape what is put into them as HTML", () => {
    expect(sayHtml("layout.wrong", { contact: "<i>" }, { a: (text) => `<a>${text}</a>` })).toBe(
      "Something wrong? <a>&#60;i&#62;</a>",
    );
  });
  it("keep French signs on the line of their word", () => {
    inLanguage("fr");
    expect(say("layout.wrong", { contact: "a@b.example" })).toContain("Une erreur\u00a0?");
  });
  it("go to a script of the page by their topic", () => {
    expect(messagesFor(["layout.sk"])).toEqual({ "layout.skip": "Skip to the page" });
  });
});
