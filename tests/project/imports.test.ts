import { describe, expect, it } from "vitest";
import { filesBelow, importsOf, packageOf, runtimeImportsOf } from "./source-files.ts";

/** Below each folder of src, the folders it may import from. A file directly in src counts as a folder. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  "launch.js": [],
  "mistake.ts": [],
  engine: ["mistake.ts"],
  geodesy: ["mistake.ts"],
  grids: ["mistake.ts", "geodesy"],
  dates: ["mistake.ts"],
  names: ["mistake.ts"],
  scheme: ["mistake.ts", "geodesy", "grids", "dates", "names"],
  records: ["mistake.ts", "engine", "geodesy", "grids", "dates", "names", "scheme"],
  review: ["mistake.ts", "engine", "geodesy", "grids", "dates", "names", "scheme", "records"],
  measures: ["mistake.ts", "engine", "geodesy", "grids", "dates", "names", "scheme", "records"],
  publishing: ["mistake.ts", "engine", "geodesy", "grids", "dates", "names", "scheme", "records", "review", "measures"],
  build: [
    "mistake.ts",
    "engine",
    "geodesy",
    "grids",
    "dates",
    "names",
    "scheme",
    "records",
    "review",
    "measures",
    "publishing",
  ],
  site: ["mistake.ts", "geodesy", "grids", "publishing"],
};

/** Packages that one folder alone may import, so that what is risky about them is dealt with in one place. */
const ONE_SEAM: Readonly<Record<string, string>> = {
  "@duckdb/node-api": "engine",
  proj4: "geodesy",
  commander: "build",
};

/** Folders whose functions only compute: nothing of the machine reaches them. */
const PURE = ["geodesy", "grids", "dates", "names", "measures"];

const SOURCES = filesBelow("src").filter(
  (path) => /\.(ts|js|astro)$/.test(path) && !path.startsWith("src/build/template/"),
);

/** Every import of every source file: from which file, to what. */
const IMPORTS = SOURCES.flatMap((from) => importsOf(from).map((to) => ({ from, to, arrow: `${from} → ${to}` })));

function folderOf(path: string): string {
  return path.split("/")[1] ?? "";
}

describe("imports", () => {
  it("are read from TypeScript, JavaScript and components", () => {
    expect(SOURCES.length).toBeGreaterThan(30);
    expect(importsOf("src/build/serve.ts")).toEqual(
      expect.arrayContaining(["node:http", "src/mistake.ts", "src/build/byte-range.ts"]),
    );
    expect(IMPORTS.filter(({ from }) => from.endsWith(".astro")).length).toBeGreaterThan(0);
  });

  it("know every folder of src", () => {
    expect([...new Set(SOURCES.map(folderOf))].filter((folder) => !(folder in MAY_IMPORT))).toEqual([]);
  });

  it("go in one direction between folders", () => {
    const wrong = IMPORTS.filter(({ from, to }) => {
      const [own, other] = [folderOf(from), folderOf(to)];
      return to.startsWith("src/") && own !== other && MAY_IMPORT[own]?.includes(other) !== true;
    });
    expect(wrong.map(({ arrow }) => arrow)).toEqual([]);
  });

  it("never leave src by a relative path", () => {
    const outside = IMPORTS.filter(({ to }) => to.startsWith("../") || /^(tests|scripts|content)\//.test(to));
    expect(outside.map(({ arrow }) => arrow)).toEqual([]);
  });

  it("go round in no circle", () => {
    expect(findCircle()).toEqual([]);
  });

  it("reach the published tables from the site through their contracts alone, but for types", () => {
    const wrong = SOURCES.filter((path) => folderOf(path) === "site").flatMap((from) =>
      runtimeImportsOf(from)
        .filter((to) => folderOf(to) === "publishing" && !to.startsWith("src/publishing/contracts"))
        .map((to) => `${from} → ${to}`),
    );
    expect(wrong).toEqual([]);
    const contracts = SOURCES.filter((path) => path.startsWith("src/publishing/contracts"));
    expect(contracts.length).toBeGreaterThan(3);
    const more = contracts
      .flatMap(runtimeImportsOf)
      .filter((to) => to !== "zod" && !to.startsWith("src/publishing/contracts/"));
    expect(more).toEqual([]);
  });

  it("reach a risky package in one folder only", () => {
    const wrong = IMPORTS.filter(({ from, to }) => {
      const seam = to.startsWith("src/") ? undefined : ONE_SEAM[packageOf(to)];
      return seam !== undefined && folderOf(from) !== seam;
    });
    expect(wrong.map(({ arrow }) => arrow)).toEqual([]);
  });

  it("reach nothing of the machine from folders that only compute", () => {
    const wrong = IMPORTS.filter(({ from, to }) => PURE.includes(folderOf(from)) && to.startsWith("node:"));
    expect(wrong.map(({ arrow }) => arrow)).toEqual([]);
  });

  it("say .ts", () => {
    const wrong = IMPORTS.filter(({ to }) => to.startsWith("src/") && !/\.(ts|js|astro|css|json|svg|sql)$/.test(to));
    expect(wrong.map(({ arrow }) => arrow)).toEqual([]);
  });
});

/** The files of one circle of imports, or none. */
function findCircle(): string[] {
  const state = new Map<string, "open" | "closed">();
  const visit = (path: string, trail: readonly string[]): string[] => {
    if (state.get(path) === "open") return [...trail.slice(trail.indexOf(path)), path];
    if (state.has(path)) return [];
    state.set(path, "open");
    for (const to of SOURCES.includes(path) ? runtimeImportsOf(path) : []) {
      const circle = visit(to, [...trail, path]);
      if (circle.length > 0) return circle;
    }
    state.set(path, "closed");
    return [];
  };
  for (const path of SOURCES) {
    const circle = visit(path, []);
    if (circle.length > 0) return circle;
  }
  return [];
}
