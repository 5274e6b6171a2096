import { readFileSync } from "node:fs";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { visibleText } from "../support/built-pages.ts";
import { type RenderedFixture, renderFixture } from "../support/rendered-fixture.ts";

/** The sixth species is a newcomer; with 48 squares some of the others have change that can be judged. */
const HECTADS = ["NY", "NZ", "SD", "SE"].flatMap((letters) =>
  Array.from({ length: 20 }, (_, index) => `${letters}${Math.floor(index / 5) + 2}${(index % 5) + 2}`),
);

let two: RenderedFixture;
let one: RenderedFixture;
beforeAll(async () => {
  two = await renderFixture({ taxa: 6, hectads: HECTADS }, "/");
  one = await renderFixture({ taxa: 3, periods: 1 }, "/");
});
afterAll(() => {
  for (const rendered of [two, one]) rendered?.remove();
});

const html = ({ folder }: RenderedFixture, name: string) => readFileSync(path.join(folder, name, "index.html"), "utf8");
/** Text of a page as read: bold words end where their sentence does. */
const asRead = (page: string) => visibleText(page).replace(/ (?=[.,;:])/g, "");
const text = (rendered: RenderedFixture, name: string) => asRead(html(rendered, name));
const section = (rendered: RenderedFixture, name: string, id: string) =>
  asRead(html(rendered, name).match(new RegExp(`<section[^>]* id="${id}"[\\s\\S]*?</section>`))?.[0] ?? "");

describe("the lines on a species page", () => {
  it("say whether they agree, each with its interval and number", () => {
    const change = section(two, "species/red-tailed", "change");
    expect(change).toContain(
      "Four of four lines that speak show more squares, more squares than expected from the group as a whole and a larger share of lists that name it.",
    );
    expect(change).toContain("more squares than expected from the group as a whole");
    expect(change).toMatch(/\+38\s%\s*\+17 to \+59\s*910\s*squares/);
    expect(section(two, "species/buff-tailed", "change")).toContain("The lines disagree:");
  });
  it("say that squares compared are not corrected for recording, and that a method has lost its claim", () => {
    const change = section(two, "species/red-tailed", "change");
    expect(change).toContain("not corrected for recording");
    expect(change).toContain("its correction for recording failed its test");
    expect(section(two, "species/red-tailed-cuckoo", "change")).toContain("That line is not corrected for recording.");
  });
  it("say not applicable, with the reason, where a method is silent", () => {
    const change = section(two, "species/common-carder", "change");
    expect(change).toContain("None of the lines can judge it.");
    expect(change).toContain("not applicable: the group has 24 taxa; 30 are needed");
    expect(html(two, "species/common-carder").match(/class="unjudged"/g)?.length).toBeGreaterThanOrEqual(4);
  });
  it("never stand without how many squares are covered", () => {
    for (const slug of ["red-tailed", "buff-tailed", "common-carder", "garden"]) {
      expect(section(two, `species/${slug}`, "change"), slug).toMatch(
        /\d of \d+ squares (?:is|are) covered in both periods/,
      );
      expect(section(two, `species/${slug}/figures`, "change"), slug).toMatch(/covered in both periods/);
    }
  });
});

describe("the page of figures", () => {
  it("is linked from the species page and leads back", () => {
    expect(html(two, "species/red-tailed")).toContain('href="/species/red-tailed/figures/"');
    expect(html(two, "species/red-tailed/figures")).toContain('href="/species/red-tailed/"');
  });
  it("marks in words what a line hangs on", () => {
    const sensitivity = section(two, "species/red-tailed/figures", "sensitivity");
    expect(sensitivity).toContain("The answer changes when counting without specimens and literature (four lines).");
    expect(sensitivity).toContain("turns round: fewer squares");
    expect(sensitivity).toContain("no longer a direction");
    expect(section(two, "species/common-carder/figures", "sensitivity")).toContain(
      "No line can judge it, whatever is counted.",
    );
  });
  it("shows series with provisional years open and silent years dotted", () => {
    const page = html(two, "species/red-tailed/figures");
    expect(page).toContain('class="point provisional"');
    const series = section(two, "species/red-tailed/figures", "series");
    expect(series).toContain("34 of 35 years have enough to say");
    expect(series).toContain("at equal list length and season; its correction for recording failed its test");
  });
  it("gives a newcomer a map of first years, and nobody else", () => {
    expect(section(two, "species/garden/figures", "first-years")).toMatch(/First recorded in 20\d\d/);
    expect(html(two, "species/garden/figures")).toContain('<section id="first-years"');
    expect(html(two, "species/red-tailed/figures")).not.toContain('id="first-years"');
    expect(html(two, "species/garden")).toContain("#first-years");
  });
  it("shows nothing of change in an atlas of one period", () => {
    for (const page of ["species/red-tailed", "species/red-tailed/figures"]) {
      expect(html(one, page), page).not.toMatch(/id="(?:change|sensitivity|rules|territories|series|first-years)"/);
      expect(text(one, page), page).not.toMatch(/found in both|not refound|comparable|corrected for recording/i);
    }
    expect(html(one, "methods")).not.toContain('id="known-truth"');
  });
});

describe("pages of change", () => {
  it("never read a square without a record as an absence", () => {
    for (const slug of ["red-tailed", "garden", "common-carder"])
      for (const id of ["change", "sensitivity", "rules", "territories", "series", "first-years"])
        expect(section(two, `species/${slug}/figures`, id), `${slug} ${id}`).not.toMatch(
          /\b(?:absent|absence|lost|losses|extinct|disappeared|died out)\b/i,
        );
  });
});

describe("the methods page", () => {
  it("shows raw counts to fail, and withdraws the claim of a method that misses its targets", () => {
    const truth = section(two, "methods", "known-truth");
    expect(truth).toContain("counting squares alone calls up to 97 % of them changed");
    expect(truth).toContain("its claim to correct for recording is withdrawn: 11.2 % of unchanged species");
    expect(section(two, "methods", "reporting-rate")).toContain("It does not claim to correct for recording");
    expect(section(two, "methods", "local-frequencies")).toContain("bears out");
  });
});
