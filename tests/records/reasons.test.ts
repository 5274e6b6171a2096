import { expect, it } from "vitest";
import { findingTitle } from "../../src/records/finding-titles.ts";
import { REASONS, reasonInWords } from "../../src/records/reasons.ts";

it("every reason is in words of its own", () => {
  const words = Object.values(REASONS);
  expect(new Set(words).size).toBe(words.length);
  expect(reasonInWords("date_unreadable")).toBe("date cannot be read");
});

it("a check without a title shows its name, and one that is a reason the reason's words", () => {
  expect(findingTitle("some_new_check")).toBe("some new check");
  expect(findingTitle("stray_quotation_mark")).toBe("stray quotation mark");
  expect(findingTitle("name_unknown")).toBe(REASONS["name_unknown"]);
});
