import { expect, it } from "vitest";
import { statedNumber } from "../../src/records/stated-number.ts";

it.each([
  ["51.4778", 51.4778],
  [" 51,4778 ", 51.4778],
  ["+7", 7],
  ["−0.5", -0.5],
  ["-.5", -0.5],
  ["1e3", 1000],
  ["1,234.5", undefined],
  ["1.234,5", undefined],
  ["12 m", undefined],
  ["Infinity", undefined],
  ["1e400", undefined],
  ["+-7", undefined],
  [`${"1".repeat(100_000)}x`, undefined],
  ["0x10", undefined],
  ["", undefined],
])("%j is %s", (text, number) => {
  expect(statedNumber(text)).toBe(number);
});
