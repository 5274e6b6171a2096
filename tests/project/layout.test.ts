import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { filesBelow, ROOT, read } from "./source-files.ts";

/** What may stand at the top, beside files that begin with a dot and what git ignores. */
const TOP = [
  "CHANGELOG.md",
  "CITATION.cff",
  "DEVELOPERS.md",
  "LICENSE",
  "README.md",
  "astro.config.mjs",
  "content",
  "package-lock.json",
  "package.json",
  "scripts",
  "src",
  "tests",
  "tsconfig.json",
];

const IGNORED = ["atlas", "coverage", "dist", "node_modules"];

/** Folders of tests that are about the whole, not about one source file. */
const ABOUT_THE_WHOLE = ["content", "data", "golden", "package", "project", "reference", "support"];

/** Tests of scripts stand in folders of their own. */
const OF_SCRIPTS: Readonly<Record<string, string>> = { scripts: "scripts", demonstration: "scripts/demonstration" };

/** What may be tested together: a folder's laws, what befalls it, what it lets slip, its docstrings' examples, or all under its own name. */
const OF_A_FOLDER = ["laws", "faults", "examples", "leak"];

/** Lines above which a file holds more than one thing. A contract is read whole and may be longer. */
const LONGEST = 300;
const MAY_BE_LONGER: readonly string[] = [];

const CODE = filesBelow("src").filter(
  (path) => /\.(ts|js|astro)$/.test(path) && !path.startsWith("src/build/template/"),
);
const TESTS = filesBelow("tests").filter((path) => path.endsWith(".test.ts"));

describe("layout", () => {
  it("keeps the top to what belongs there", () => {
    const found = readdirSync(ROOT).filter(
      (name) => !name.startsWith(".") && !name.endsWith(".tgz") && !IGNORED.includes(name),
    );
    expect(found.filter((name) => !TOP.includes(name))).toEqual([]);
  });

  it("has no bag for whatever fits nowhere", () => {
    const bags = /(^|\/)(utils?|helpers?|common|misc|lib|shared)(\/|\.[a-z]+$)/;
    expect([...CODE, ...filesBelow("scripts"), ...filesBelow("tests")].filter((path) => bags.test(path))).toEqual([]);
  });

  it("names files in kebab case, components in Pascal case", () => {
    const wrong = CODE.filter((path) => {
      const name = path.split("/").at(-1) ?? "";
      const isComponent = path.endsWith(".astro") && !path.startsWith("src/site/pages/");
      return !(isComponent ? /^[A-Z][A-Za-z0-9]*\.astro$/ : /^[a-z0-9-]+(\.[a-z0-9]+)+$/).test(
        name.replace(/^\[(\.\.\.)?(\w+)\]/, "$2"),
      );
    });
    expect(wrong).toEqual([]);
  });

  it("keeps files to one concept", () => {
    expect(CODE.filter((path) => !MAY_BE_LONGER.includes(path) && read(path).split("\n").length > LONGEST)).toEqual([]);
  });

  it("puts each test at the path of what it tests", () => {
    const astray = TESTS.filter((path) => {
      const [, folder = "", ...rest] = path.replace(/\.test\.ts$/, "").split("/");
      const isWholeSite = folder === "site" && rest.length === 1;
      if (ABOUT_THE_WHOLE.includes(folder) || isWholeSite) return false;
      const place = join(ROOT, OF_SCRIPTS[folder] ?? join("src", folder));
      if ([...OF_A_FOLDER, rest.at(-2)].includes(rest.at(-1) ?? ""))
        return !existsSync(join(place, ...rest.slice(0, -1)));
      return !["", ".ts", ".js", ".astro"].some((ending) => existsSync(join(place, ...rest) + ending));
    });
    expect(astray).toEqual([]);
  });

  it("leaves no test out, and lets none stand alone", () => {
    const loose = TESTS.filter((path) => /\b(it|test|describe)(\.\w+)*\.(skip|only|todo|fails)\b/.test(read(path)));
    expect(loose).toEqual([]);
  });
});
