import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { ROOT, read } from "./source-files.ts";

/** Documents that name files and commands of this project. */
const DOCUMENTS = ["README.md", "DEVELOPERS.md", "content/README.md"];

/** Where a path may begin: at the top, or in a scheme's folder. */
const BEGINNINGS = [ROOT, join(ROOT, "content")];

/** Paths that exist only after a command has run, or where a scheme has them. */
const MADE_LATER =
  /^(\.build|dist|node_modules|records|review|atlas|my-atlas|decisions\.csv|sites\.csv|regions\.geojson)(\/|$)/;

const { scripts } = JSON.parse(read("package.json")) as { scripts: Record<string, string> };

/** Words in back-quotes that are a path of this project: with a slash inside, or a file's ending. */
function pathsIn(text: string): string[] {
  const quoted = [...text.matchAll(/`([^`\n]+)`/g)].map((match) => match[1] ?? "");
  return quoted.filter(
    (word) =>
      /^[\w.@-]+(\/[\w.@*-]+)*\/?$/.test(word) &&
      (word.includes("/") || /\w\.(md|json|ts|js|yaml|csv|mjs)$/.test(word)),
  );
}

/** A path may hold one star, for the names of one folder. */
function exists(path: string): boolean {
  if (!path.includes("*")) return BEGINNINGS.some((folder) => existsSync(join(folder, path)));
  const [before = "", after = ""] = path.split("*");
  const cut = before.lastIndexOf("/") + 1;
  return BEGINNINGS.map((folder) => join(folder, before.slice(0, cut))).some(
    (folder) =>
      existsSync(folder) &&
      readdirSync(folder).some((name) => name.startsWith(before.slice(cut)) && name.endsWith(after)),
  );
}

describe.each(DOCUMENTS)("%s", (document) => {
  it("names files that exist", () => {
    const missing = pathsIn(read(document)).filter((path) => !MADE_LATER.test(path) && !exists(path));
    expect(missing).toEqual([]);
  });

  it("links to files and headings that exist", () => {
    const text = read(document);
    const headings = [...text.matchAll(/^#+ (.+)$/gm)].map((match) =>
      (match[1] ?? "")
        .toLowerCase()
        .replace(/[^\w -]/g, "")
        .replaceAll(" ", "-"),
    );
    const links = [...text.matchAll(/\]\((?!https?:|mailto:)([^)\s]+)\)/g)].map((match) => match[1] ?? "");
    const broken = links.filter((link) =>
      link.startsWith("#") ? !headings.includes(link.slice(1)) : !exists(link.replace(/#.*$/, "")),
    );
    expect(broken).toEqual([]);
  });

  it("runs npm scripts that exist", () => {
    const named = [...read(document).matchAll(/npm run (?:--silent )?([\w:-]+)/g)].map((match) => match[1] ?? "");
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });
});

describe("DEVELOPERS.md", () => {
  it("is short enough to be read", () => {
    expect(read("DEVELOPERS.md").split("\n").length).toBeLessThan(200);
  });
});
