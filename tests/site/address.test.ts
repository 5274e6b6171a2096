import { describe, expect, it } from "vitest";
import { address, rebase } from "../../src/site/address.ts";

describe("address", () => {
  it("joins a prefix and a path with one slash, however either is written", () => {
    for (const base of ["/atlas", "/atlas/", "/atlas//"]) expect(address("species/a/", base)).toBe("/atlas/species/a/");
    expect(address("/species/", "/")).toBe("/species/");
    expect(address("", "/")).toBe("/");
  });
});

describe("rebase", () => {
  it("moves links from the top of the site, and nothing else", () => {
    const html =
      '<a href="/methods/">m</a><img src="/a.png"><a href="//host/x">h</a><a href="#here">p</a><a href="https://e.org/">e</a>';
    expect(rebase(html, "/atlas/")).toBe(
      '<a href="/atlas/methods/">m</a><img src="/atlas/a.png"><a href="//host/x">h</a><a href="#here">p</a><a href="https://e.org/">e</a>',
    );
  });
  it("takes relative links as from the top, since the text has no page of its own", () => {
    const html =
      '<a href="data/licence.txt">l</a><a href="mailto:a@b.example">m</a><a href="../x/">d</a><a href="">e</a>';
    expect(rebase(html, "/atlas/")).toBe(
      '<a href="/atlas/data/licence.txt">l</a><a href="mailto:a@b.example">m</a><a href="../x/">d</a><a href="">e</a>',
    );
  });
  it("leaves text at the top of a host as it is", () => {
    expect(rebase('<a href="/methods/">how</a>', "/")).toBe('<a href="/methods/">how</a>');
  });
});
