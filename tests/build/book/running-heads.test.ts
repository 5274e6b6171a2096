import { describe, expect, it } from "vitest";
import { runningHeads } from "../../../src/build/book/running-heads.ts";
import type { BookFile } from "../../../src/publishing/contracts/book.ts";

const book: BookFile = {
  language: "en-GB",
  title: 'The "Carder" Atlas',
  heading: "",
  summary: "",
  edition: "Edition 1",
  day: "2025-03-01",
  notice: "Invented records. The species are real.",
  imprint: [],
  words: { contents: "", index: "" },
  parts: [{ title: "", chapters: [{ path: "/a/", title: "Barbut’s\\ cuckoo}", note: "" }] }],
  names: [],
};

describe("running heads", () => {
  it("make a kind of page of each chapter, and no title ends the style early", () => {
    expect(runningHeads(book)).toContain(
      '#chapter-1{page:chapter-1}@page chapter-1{@top-right{content:"Barbut’s\\5c  cuckoo\\7d "}}',
    );
  });
  it("say at the foot of every page which edition it is, and that it is invented", () => {
    expect(runningHeads(book)).toContain('content:"The \\22 Carder\\22  Atlas. Edition 1. Invented records."');
  });
});
