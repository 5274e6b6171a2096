import { existsSync, readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { filesBelow, ROOT, read } from "./source-files.ts";

/** Documents that name files and commands of this project. */
const DOCUMENTS = ["README.md", "DEVELOPERS.md", ...filesBelow("content").filter((path) => path.endsWith("README.md"))];

/** Paths that exist only after a command has run, or in a scheme's own folder. */
const MADE_LATER = /^(\.build|dist|node_modules|atlas|my-atlas)(\/|$)/;

const { scripts } = JSON.parse(read("package.json")) as { scripts: Record<string, string> };

/** Words in back-quotes that are a path of this project: with a slash inside, or a file's ending. */
function pathsIn(text: string): string[] {
  const quoted = [...text.matchAll(/`([^`\n]+)`/g)].map((match) => match[1] ?? "");
  return quoted.filter((word) => /^[\w.@-]+(\/[\w.@*-]+)*\/?$/.test(word) && (word.includes("/") || /\.(md|json|ts|js|yaml|csv|mjs)$/.test(word)));
}

/** A path may hold one star, for the names of one folder. */
function exists(path: string, from: string): boolean {
  const folders = [ROOT, join(ROOT, dirname(from))];
  if (!path.includes("*")) return folders.some((folder) => existsSync(join(folder, path)));
  const [before = "", after = ""] = path.split("*");
  const folder = join(ROOT, before.slice(0, before.lastIndexOf("/") + 1));
  const name = before.slice(before.lastIndexOf("/") + 1);
  return existsSync(folder) && readdirSync(folder).some((entry) => entry.startsWith(name) && entry.endsWith(after));
}

describe.each(DOCUMENTS)("%s", (document) => {
  it("names files that exist", () => {
    const missing = pathsIn(read(document)).filter((path) => !MADE_LATER.test(path) && !exists(path, document));
    expect(missing).toEqual([]);
  });

  it("links to files and headings that exist", () => {
    const text = read(document);
    const headings = [...text.matchAll(/^#+ (.+)$/gm)].map((match) => (match[1] ?? "").toLowerCase().replace(/[^\w -]/g, "").replaceAll(" ", "-"));
    const links = [...text.matchAll(/\]\((?!https?:|mailto:)([^)\s]+)\)/g)].map((match) => match[1] ?? "");
    const broken = links.filter((link) => (link.startsWith("#") ? !headings.includes(link.slice(1)) : !exists(link.replace(/#.*$/, ""), document)));
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
