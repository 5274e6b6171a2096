import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type AgreementLine, agreementSentence } from "../../../../src/site/components/figures/agreement.ts";
import { type Direction, methodWords, TREND_METHODS } from "../../../../src/site/components/figures/lines.ts";

const METHODS = TREND_METHODS;
const DIRECTIONS: readonly Direction[] = ["more", "fewer", "none", null];

/** Lines of all methods in their order: squares compared, local frequencies, reporting rate, relative change. */
function lines(directions: readonly Direction[], corrected: typeof METHODS = METHODS): AgreementLine[] {
  return directions.map((direction, index) => {
    const method = METHODS[index] ?? "squares_compared";
    const isCorrected = method !== "squares_compared" && corrected.includes(method);
    return { ...methodWords(method), method, direction, isCorrected };
  });
}
const say = (...directions: Direction[]) => agreementSentence(lines(directions)).replaceAll("**", "");

describe("agreementSentence", () => {
  it("says nothing without lines, and that none can judge where all are silent", () => {
    expect(agreementSentence([])).toBe("");
    expect(say(null, null, null, null)).toBe("None of the lines can judge it.");
    expect(say(null)).toBe("The one line cannot judge it.");
  });
  it("counts the lines that agree among those that speak", () => {
    expect(say("more", "more", null, null)).toBe(
      "Two of two lines that speak show more squares and more squares than expected from the group as a whole.",
    );
    expect(say(null, "fewer", null, "fewer")).toBe(
      "Two of two lines that speak show fewer squares than expected from the group as a whole.",
    );
    expect(say("more", "more", "more", "more")).toBe(
      "Four of four lines that speak show more squares, more squares than expected from the group as a whole and a larger share of lists that name it.",
    );
    expect(say("fewer", "none", "none", null)).toBe(
      "One of three lines that speak shows fewer squares; two show no direction.",
    );
  });
  it("names the lines on either side where they disagree", () => {
    expect(say("more", "fewer", "none", "fewer")).toBe(
      "The lines disagree: more squares (squares compared), fewer squares than expected from the group as a whole (local frequencies and change relative to the group); no direction (reporting rate).",
    );
  });
  it("says that intervals which include no change show no direction", () => {
    expect(say("none", null, "none", null)).toBe(
      "None of the two lines that speak shows a direction: each interval includes no change.",
    );
  });
  it("warns where nothing that speaks is corrected for recording", () => {
    expect(say("more", null, null, null)).toBe(
      "One of four lines speaks, squares compared, and shows more squares. That line is not corrected for recording.",
    );
    expect(agreementSentence(lines([null, null, "more", null], [])).replaceAll("**", "")).toBe(
      "One of four lines speaks, reporting rate, and shows a larger share of lists that name it. It is not shown to correct for recording.",
    );
    expect(agreementSentence(lines(["more", "more", null, null], [])).replaceAll("**", "")).toBe(
      "Two of two lines that speak show more squares and more squares than expected from the group as a whole. None of them is shown to correct for recording.",
    );
  });
  it("says disagree exactly where lines point both ways, and judges exactly where one speaks", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...DIRECTIONS), { minLength: 1, maxLength: 4 }), (directions) => {
        const sentence = agreementSentence(lines(directions));
        expect(sentence.includes("disagree")).toBe(directions.includes("more") && directions.includes("fewer"));
        expect(sentence.includes("judge it")).toBe(directions.every((direction) => direction === null));
        expect(sentence.split("**").length % 2).toBe(1);
        expect(sentence).toMatch(/\.$/);
      }),
    );
  });
});
