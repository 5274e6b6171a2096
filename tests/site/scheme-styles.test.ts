import { describe, expect, it } from "vitest";
import { schemeStyles } from "../../src/site/scheme-styles.ts";

const scheme = {
  accent: { light: "#8c2467", dark: "#f2a3d0" },
  title: "The Carder Atlas",
  edition: { id: "2025.1", date: "2025-03-01" },
  invented: true,
};

describe("schemeStyles", () => {
  it("sets the accent in light and dark, and says on paper that records are invented", () => {
    const css = schemeStyles(scheme);
    expect(css).toContain(":root:root{--accent:#8c2467}");
    expect(css).toContain("(prefers-color-scheme:dark){:root:root{--accent:#f2a3d0}}");
    expect(css).toContain('content:"The Carder Atlas, edition 2025.1. Invented records."');
  });
  it("takes no accent that is not a hexadecimal colour", () => {
    const css = schemeStyles({ ...scheme, accent: { light: "red;} body{display:none", dark: "#12345" } });
    expect(css).not.toContain("display");
    expect(css).not.toContain("#12345");
  });
  it("keeps a title from ending its string", () => {
    const css = schemeStyles({ ...scheme, title: 'A"; } * { display: none; } \\' });
    expect(css).not.toMatch(/"A"/);
    expect(css.match(/"/g)).toHaveLength(4);
  });
});
