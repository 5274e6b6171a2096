import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it, vi } from "vitest";
import { AtlasFile, FiguresFile, TaxonFile, type TranslationFile } from "../../../src/publishing/contracts.ts";
import { atlasIn } from "../../../src/site/in-language/atlas-in-language.ts";
import type { PageLanguage } from "../../../src/site/in-language/page-language.ts";
import { figuresIn, taxonIn } from "../../../src/site/in-language/taxon-in-language.ts";
import { markLanguage } from "../../../src/site/words/fallback.ts";
import { FRENCH } from "../../support/published/translation.ts";
import { writePublishedFixture } from "../../support/published-fixture.ts";

const folder = writePublishedFixture(mkdtempSync(join(tmpdir(), "atlaswright-languages-")), { taxa: 5 });
const parsed = <T>(name: string, contract: { parse: (value: unknown) => T }) =>
  contract.parse(JSON.parse(readFileSync(join(folder, name), "utf8")));
const published = parsed("atlas.json", AtlasFile);
const surroundings = { habitat: { label: "Milieu", terms: { grassland: "Prairies" } } };
const words: TranslationFile = { ...FRENCH, surroundings };
const page: PageLanguage = { first: "en-GB", tag: "fr", words };
const english = (text: string) => markLanguage(text, "en-GB");

vi.stubEnv("ATLAS_LANGUAGE", "fr");
afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true, force: true });
});

describe("an atlas in the language of its pages", () => {
  const shown = atlasIn(page, published);

  it("has the scheme's words, and those it lacks as the first language's", () => {
    expect(shown.castes.map(({ label }) => label)).toEqual(["Reine", "Ouvrière", "Femelle", "Mâle"]);
    expect(shown.group.many).toBe("bourdons");
    expect(shown.first_seen_groups.slice(0, 2).map(({ title }) => title)).toEqual([
      "Extrémité rouge ou orange",
      english("White or buff tail"),
    ]);
    expect(shown.title).toBe(published.title);
    expect(shown.invented_notice).toMatch(/^Les espèces sont réelles/);
  });
  it("names an open period in its language", () => {
    const open = { ...published, periods: [{ id: "p", label: "to 1989", from: null, to: 1989 }] };
    expect(atlasIn(page, open).periods[0]?.label).toBe("jusqu’en 1989");
  });
  it("is as it was published on pages of its own language, whatever files there are", () => {
    const own = atlasIn({ first: "en-GB", tag: "en-GB", words: undefined }, published);
    expect({ ...own, invented_notice: "" }).toEqual({ ...published, invented_notice: "" });
  });

  it("shows a taxon by its account, and names its castes", () => {
    const taxon = taxonIn(page, parsed("taxa/red-tailed.json", TaxonFile), { shown, published });
    expect(taxon.account.map(({ id, title }) => [id, title])[0]).toEqual(["know", "Comment le reconnaître"]);
    expect(taxon.season_by_caste.map(({ label, many }) => many ?? label)).toEqual([
      "Reines",
      "Ouvrières",
      "Mâles",
      "Non précisé",
    ]);
    expect(taxon.sizes.map(({ note }) => note).at(-1)).toBe("Antennes plus longues.");
  });
  it("shows a taxon without an account in it by the first language's, and says so once", () => {
    const { account, look_alikes } = taxonIn(page, parsed("taxa/buff-tailed.json", TaxonFile), { shown, published });
    expect(account.map(({ html }) => html.includes("Cette fiche est en anglais"))).toEqual([true, false, false]);
    expect(account.every(({ html }) => html.includes('<div lang="en-GB">'))).toBe(true);
    for (const { difference } of look_alikes) expect(difference === "" || difference.includes("\uE000")).toBe(true);
  });
  it("labels figures", () => {
    const figures = parsed("figures/red-tailed.json", FiguresFile);
    const labels = new Set(figuresIn(page, figures).seasons.map(({ caste, caste_label }) => `${caste} ${caste_label}`));
    for (const label of labels) expect(label).toMatch(/Reine|Ouvrière|Mâle|Femelle|Toutes les castes|Non précisé/);
    const used = figuresIn(page, figures).surroundings.find(({ term }) => term === "grassland");
    expect(used === undefined || used.term_label === "Prairies").toBe(true);
  });
});
