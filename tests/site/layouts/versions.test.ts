import { describe, expect, it } from "vitest";
import { alternates, versionsOf } from "../../../src/site/layouts/versions.ts";

const atlas = { first: "en-GB", languages: ["fr", "ga"] };
const paths = (pathname: string, tag: string, top = "/atlas/") =>
  versionsOf(pathname, tag, atlas, top).map(({ path }) => path);

describe("versionsOf", () => {
  it("leads from each language to the same page in the others", () => {
    const all = ["/atlas/species/red-tailed/", "/atlas/fr/species/red-tailed/", "/atlas/ga/species/red-tailed/"];
    expect(paths("/atlas/species/red-tailed/", "en-GB")).toEqual(all);
    expect(paths("/atlas/fr/species/red-tailed/", "fr")).toEqual(all);
    expect(paths("/ga/", "ga", "/")).toEqual(["/", "/fr/", "/ga/"]);
  });
  it("leads from a page that is not there to the home pages", () => {
    expect(paths("/atlas/fr/404/", "fr")).toEqual(["/atlas/", "/atlas/fr/", "/atlas/ga/"]);
    expect(paths("/atlas/404", "en-GB")).toEqual(["/atlas/", "/atlas/fr/", "/atlas/ga/"]);
  });
  it("is one where there is one language", () => {
    expect(versionsOf("/species/", "en-GB", { first: "en-GB", languages: [] }, "/")).toEqual([
      { tag: "en-GB", path: "/species/" },
    ]);
  });
});

describe("alternates", () => {
  const real = { language: "en-GB", languages: ["fr"], address: "https://example.org/atlas", invented: false };
  const links = (changed: Partial<typeof real> = {}) =>
    alternates("/atlas/fr/squares/", "fr", { ...real, ...changed }, "/atlas/").map(
      ({ hreflang, href }) => `${hreflang} ${href}`,
    );

  it("name the page in each language, and the first for everyone else", () => {
    const all = [
      "en-GB https://example.org/atlas/squares/",
      "fr https://example.org/atlas/fr/squares/",
      "x-default https://example.org/atlas/squares/",
    ];
    expect(links()).toEqual(all);
    expect(links({ address: "https://example.org/atlas/" })).toEqual(all);
  });
  it("are none where records are invented, no address is known, or there is one language", () => {
    expect([links({ invented: true }), links({ address: "" }), links({ languages: [] })]).toEqual([[], [], []]);
  });
});
