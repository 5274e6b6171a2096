import { describe, expect, it } from "vitest";
import { readScheme } from "../../src/scheme/scheme.ts";

const scheme = readScheme("content");
const french = scheme.translations.find(({ language }) => language === "fr");

describe("the demonstration in French", () => {
  it("has every word of its settings", () => {
    const { settings, outside } = scheme;
    const words = french?.words;
    expect(Object.keys(words?.castes ?? {})).toEqual(settings.castes.map(({ id }) => id));
    expect(Object.keys(words?.territories ?? {})).toEqual(settings.territories.map(({ id }) => id));
    expect(Object.keys(words?.first_seen ?? {})).toEqual(settings.first_seen.map(({ id }) => id));
    expect(Object.keys(words?.outside ?? {})).toEqual(outside.map(({ taxonID }) => taxonID));
    for (const { id, terms } of settings.surroundings.kinds)
      expect(Object.keys(words?.surroundings[id]?.terms ?? {})).toEqual(terms.map((term) => term.id));
    for (const text of [words?.heading, words?.summary, words?.citation, words?.invented_notice, words?.sending])
      expect(text).toMatch(/\w/);
  });

  it("has three accounts, whole, that speak of the records as invented", () => {
    expect(french?.accounts.map(({ front }) => front.taxonID)).toEqual([
      "invented-hypnorum",
      "invented-pascuorum",
      "invented-terrestris",
    ]);
    for (const { front, sections } of french?.accounts ?? []) {
      const first = scheme.accounts.get(front.taxonID);
      expect(front.sizes.map(({ caste }) => caste)).toEqual(first?.front.sizes.map(({ caste }) => caste));
      const named = (look: { taxonID?: string | undefined; outside?: string | undefined }) =>
        look.taxonID ?? look.outside;
      expect(front.look_alikes.map(named)).toEqual(first?.front.look_alikes.map(named));
      expect(sections[2]?.body, front.taxonID).toMatch(/inventé/);
    }
  });

  it("has its three pages, which say that the records are invented", () => {
    expect(french?.pages.map(({ slug }) => slug)).toEqual(["about", "accessibility", "safety"]);
    for (const { sections } of french?.pages ?? [])
      expect(sections.map(({ body }) => body).join(" ")).toMatch(/inventé/);
  });
});
