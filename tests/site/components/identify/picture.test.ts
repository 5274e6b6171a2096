import { expect, it } from "vitest";
import { picture } from "../../../../src/site/components/identify/picture.ts";

const source = (path: string, width: number, type: string) => ({
  path: `media/${path}`,
  width,
  height: 9,
  bytes: 9,
  type,
});
const at = (path: string) => `/atlas/${path}`;

it("offers webp first and a JPEG that every browser knows", () => {
  const sources = [
    source("a-480.webp", 480, "image/webp"),
    source("a-960.webp", 960, "image/webp"),
    source("a-480.jpg", 480, "image/jpeg"),
    source("a-960.jpg", 960, "image/jpeg"),
  ];
  expect(picture({ sources }, at)).toEqual({
    src: "/atlas/media/a-480.jpg",
    type: "image/jpeg",
    webp: "/atlas/media/a-480.webp 480w, /atlas/media/a-960.webp 960w",
    jpeg: "/atlas/media/a-480.jpg 480w, /atlas/media/a-960.jpg 960w",
  });
});

it("shows a drawing or a clip as its one file", () => {
  expect(picture({ sources: [source("a.svg", 480, "image/svg+xml")] }, at)).toEqual({
    src: "/atlas/media/a.svg",
    type: "image/svg+xml",
    webp: "",
    jpeg: "",
  });
});
