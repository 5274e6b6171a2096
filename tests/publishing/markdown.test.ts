import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { escapeHtml, renderMarkdown } from "../../src/publishing/markdown.ts";

describe("renderMarkdown", () => {
  it("is the example of its docstring", () => {
    expect(renderMarkdown("*B. pratorum* <script>")).toBe("<p><em>B. pratorum</em> &lt;script&gt;</p>\n");
  });

  it.each([
    "<img src=x onerror=alert(1)>",
    "<svg/onload=alert(1)>",
    "[a](javascript:alert(1))",
    "[a](JaVaScRiPt:alert(1))",
    "[a](java\tscript:alert(1))",
    "[a](data:text/html,<script>alert(1)</script>)",
    "[a](vbscript:x)",
    "![a](javascript:alert(1))",
    "![a](https://example.org/x.png)",
    "<javascript:alert(1)>",
    '[a](https://example.org "onmouseover=alert(1) x=")',
    '[a](https://example.org/"onmouseover="alert(1))',
    "```<script>\nalert(1)\n```",
    "| <b>a</b> |\n|---|\n| <iframe src=x> |",
    "# <script>alert(1)</script>",
    "<!-- --><script>alert(1)</script>",
  ])("lets no script, frame or image through: %j", (text) => {
    const html = renderMarkdown(text);
    const tags = [...html.matchAll(/<\/?([a-z0-9]+)([^>]*)>/gi)];
    expect(
      tags
        .map(([, name]) => name)
        .filter(
          (name) =>
            !/^(p|em|strong|a|h[1-6]|ul|ol|li|code|pre|blockquote|table|thead|tbody|tr|t[hd]|br|hr|del)$/.test(
              name ?? "",
            ),
        ),
    ).toEqual([]);
    for (const [, name, attributes = ""] of tags) {
      if (name === "a") expect(attributes).toMatch(/^(?: href="(?:https?:|mailto:|\.{0,2}\/|#)[^"<>]*")?$/);
      else expect(attributes.replace(/ (?:align|class)="[^"<>]*"/, "")).toBe("");
    }
  });

  it("keeps links to web addresses, mail and pages of the atlas", () => {
    expect(renderMarkdown("[a](https://example.org/?a=1&b=2) [b](../methods/) [c](#know)")).toBe(
      '<p><a href="https://example.org/?a=1&amp;b=2">a</a> <a href="../methods/">b</a> <a href="#know">c</a></p>\n',
    );
  });

  it("opens no tag of the text's own, whatever the text", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(renderMarkdown(`${text}<script>${text}`)).not.toMatch(/<script/i);
      }),
    );
  });
});

describe("escapeHtml", () => {
  it("writes the five characters that mean something in HTML as references", () => {
    expect(escapeHtml(`&<>"'`)).toBe("&amp;&lt;&gt;&quot;&#39;");
  });
});
