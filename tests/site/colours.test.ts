/** Classes of the map as they are told apart by everybody, computed from the tokens; and words on the colours of hair. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { contrast } from "../../src/site/components/design/contrast.ts";
import { coloursOf } from "../../src/site/components/design/tokens.ts";
import { ciede2000, seen, VISIONS, type Vision } from "../support/colour-difference.ts";

const COLOURS = coloursOf(readFileSync("src/site/styles/tokens.css", "utf8"));
const SCHEMES = ["light", "dark"] as const;
type Scheme = (typeof SCHEMES)[number];
/** Classes of squares, and the land they stand on. */
const CLASSES = ["both", "new", "gone", "part", "leaf"] as const;

/**
 * Least CIEDE2000 between any two classes, and between newly found and not refound, in light and in dark. Chosen with the
 * colours: far above the 2 or 3 that a glance can miss, and in greyscale still apart. The least found are 28.8, 24.9,
 * 25.5, 22.5 and 8.5; 47.4, 50.7, 51.8, 56.5 and 8.6.
 */
const LEAST: Readonly<Record<Vision, readonly [any: number, newAgainstGone: number]>> = {
  normal: [28, 47],
  protanopia: [24, 50],
  deuteranopia: [25, 51],
  tritanopia: [22, 56],
  greyscale: [8, 8],
};

function colour(name: string, scheme: Scheme): string {
  const found = COLOURS.get(name)?.[scheme];
  if (found === undefined) throw new Error(`no colour ${name}`);
  return found;
}

const apart = (one: string, other: string, scheme: Scheme, vision: Vision) =>
  ciede2000(seen(colour(one, scheme), vision), seen(colour(other, scheme), vision));
const pairs = CLASSES.flatMap((one, place) => CLASSES.slice(place + 1).map((other) => [one, other] as const));

describe.each(SCHEMES)("classes of the map, %s", (scheme) => {
  // WCAG 2.2, 1.4.11.
  it("stand out 3 to 1 from the land", () => {
    for (const name of ["both", "new", "gone", "part"])
      expect(contrast(colour(name, scheme), colour("leaf", scheme)), name).toBeGreaterThanOrEqual(3);
  });
  it.each(VISIONS)("can be told apart, %s", (vision) => {
    const [any, newAgainstGone] = LEAST[vision];
    for (const [one, other] of pairs)
      expect(apart(one, other, scheme, vision), `${one} and ${other}`).toBeGreaterThanOrEqual(any);
    expect(apart("new", "gone", scheme, vision)).toBeGreaterThanOrEqual(newAgainstGone);
  });
});

/** Colours of hair with the words on them, as `pile.css` declares them; dark ones stand after a media query. */
function piles(css: string): { name: string; pile: string; text: string }[] {
  const text = new Map<string, string>();
  return [...css.matchAll(/([^{}]*)\{([^{}]*)\}/g)].flatMap(([, selector = "", body = ""]) => {
    const [name] = selector.match(/pile-[a-z]+/) ?? [];
    const [, pile] = body.match(/--pile:\s*(#[0-9a-f]{3,6})/i) ?? [];
    const [, own] = body.match(/--on-pile:\s*(#[0-9a-f]{3,6})/i) ?? [];
    if (name === undefined || pile === undefined) return [];
    if (own !== undefined) text.set(name, own);
    const said = text.get(name);
    return said === undefined ? [] : [{ name, pile, text: said }];
  });
}

describe("colours of hair", () => {
  const all = piles(readFileSync("src/site/styles/pile.css", "utf8"));
  it("are read, those of dark with the words of light", () => {
    expect(all.filter(({ name }) => name === "pile-black").length).toBe(2);
    expect(new Set(all.map(({ name }) => name)).size).toBeGreaterThanOrEqual(12);
  });
  // WCAG 2.2, 1.4.3.
  it("carry words that can be read, 4.5 to 1", () => {
    for (const { name, pile, text } of all) expect(contrast(pile, text), `${name} ${pile}`).toBeGreaterThanOrEqual(4.5);
  });
});
