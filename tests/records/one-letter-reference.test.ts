import { expect, it } from "vitest";
import { noteOneLetter } from "../../src/records/one-letter-reference.ts";

const checks = (text: string) => noteOneLetter(text).map(({ check }) => check);

it("says in its examples what it does", () => {
  expect(checks("H12")).toEqual(["reference_may_be_region"]);
  expect(checks("N 52 12")).toEqual(["reference_may_be_compass"]);
});

it.each(["H9", "H41", "H123456", "HU12", "N 56 00", "N 52 60", "W 11 00", "W 04 00", "S 52 12", "N5212", ""])(
  "has nothing to say of %j",
  (text) => {
    expect(checks(text)).toEqual([]);
  },
);
