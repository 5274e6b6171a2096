import { expect, it } from "vitest";
import { correctionAddress } from "../../../../src/site/components/species/correction-address.ts";

// The subject of a mailto address is percent-encoded: RFC 6068, section 2.
it("writes a letter with the page's name on it", () => {
  expect(correctionAddress("records@atlas.example", "Red-tailed bumblebee: wrong")).toBe(
    "mailto:records@atlas.example?subject=Red-tailed%20bumblebee%3A%20wrong",
  );
});

it("opens the scheme's own form where the contact is a page, and nothing where it is neither", () => {
  expect(correctionAddress("https://atlas.example/form?a=1&b=2", "x")).toBe("https://atlas.example/form?a=1&amp;b=2");
  expect(correctionAddress("", "x")).toBe("");
  expect(correctionAddress("the county museum", "x")).toBe("");
  expect(correctionAddress('a"b@c.example', "x")).toBe("");
});
