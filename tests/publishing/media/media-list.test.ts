import { expect, it } from "vitest";
import { mediaIds, mediaOf } from "../../../src/publishing/media/media-list.ts";

it("gives one file one id, and no other file the same", () => {
  expect(mediaIds(["Hind leg.svg", "hind-leg.jpg", "Hind leg.svg", "é.png", "日.png"])).toEqual([
    "hind-leg",
    "hind-leg-2",
    "hind-leg",
    "e",
    "picture",
  ]);
});

it("takes its place on the page from the largest file", () => {
  const source = (width: number) => ({
    path: `media/a-${width}.webp`,
    width,
    height: width / 2,
    bytes: 9,
    type: "image/webp",
  });
  const row = {
    file: "a.jpg",
    taxonID: "a",
    castes: [],
    form: "",
    kind: "photograph",
    parts: [],
    credit: "C",
    licence: "CC0-1.0",
    alt: "A",
    caption: "",
    date: "",
  };
  const media = mediaOf({ row, id: "a", sources: [source(480), source(960)] });
  expect([media.width, media.height, media.licence.title]).toEqual([960, 480, "Creative Commons Zero 1.0"]);
});
