import { existsSync, mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type InstalledPackage, installPackage } from "./installed-package.ts";

let folder = "";
let installed: InstalledPackage;

beforeAll(() => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), "atlaswright-package-")));
  installed = installPackage(folder);
}, 240_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Every file below a folder with its size and the time it was written. */
function stateOf(path: string): string[] {
  return readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => `${file} ${statSync(file).size} ${statSync(file).mtimeMs}`)
    .sort();
}

function textFilesBelow(path: string): string[] {
  return readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(html|json|css|js|csv|txt|md|svg|xml)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));
}

describe("the tarball", () => {
  it("holds the program, the site's sources, the template and the licence, and no test", () => {
    const has = (prefix: string) => installed.packedFiles.some((path) => path.startsWith(prefix));
    for (const wanted of [
      "src/launch.js",
      "dist/build/cli.js",
      "src/site/pages/",
      "src/build/template/",
      "LICENSE",
      "README.md",
    ]) {
      expect(has(wanted), wanted).toBe(true);
    }
    for (const unwanted of ["tests/", "scripts/", "content/", ".", "src/build/cli.ts"])
      expect(has(unwanted), unwanted).toBe(false);
  });

  it("holds every file the program reads beside its own", () => {
    const sources = readdirSync("src", { recursive: true, encoding: "utf8" }).filter(
      (path) => /\.(sql|css|html)$/.test(path) && !/^(site|build[\\/]template)[\\/]/.test(path),
    );
    expect(sources.filter((path) => !installed.packedFiles.includes(`dist/${path.replaceAll("\\", "/")}`))).toEqual([]);
  });
});

describe("the installed program, on the machine's own Node", () => {
  it("starts a scheme, checks it, builds it and leaves its own package as it was", () => {
    const own = join(installed.folder, "node_modules/atlaswright");
    const before = stateOf(own);

    const made = installed.run("new", "my-atlas");
    expect(made, made.stderr).toMatchObject({ status: 0 });
    expect(existsSync(join(installed.folder, "my-atlas/atlas.yaml"))).toBe(true);

    const checked = installed.run("check", "--content", "my-atlas");
    expect(checked, checked.stderr).toMatchObject({ status: 0 });

    const built = installed.run("build", "--content", "my-atlas", "--out", "atlas");
    expect(built, built.stderr).toMatchObject({ status: 0 });

    const atlas = join(installed.folder, "atlas");
    expect(readFileSync(join(atlas, "index.html"), "utf8")).toMatch(/^<!doctype html>/i);
    expect(existsSync(join(atlas, ".atlaswright"))).toBe(true);
    const leaks = textFilesBelow(atlas).filter((file) => readFileSync(file, "utf8").includes(folder));
    expect(leaks).toEqual([]);
    expect(stateOf(own)).toEqual(before);
  });

  it("opens the review desk, whose page it serves compiled, and ends it when told", async () => {
    const desk = installed.start("review", "--content", "my-atlas", "--port", "0", "--quiet");
    const address = await desk.said;
    const page = await (await fetch(address)).text();
    const script = /src="([^"]+\/main\.js)"/.exec(page)?.[1] ?? "";
    const module = await fetch(new URL(script, address));
    expect([module.status, module.headers.get("content-type")]).toEqual([200, "text/javascript; charset=utf-8"]);
    for (const [, other = ""] of (await module.text()).matchAll(/from "\.\/([\w-]+\.js)"/g))
      expect((await fetch(new URL(other, address))).status, other).toBe(200);
    expect((await fetch(new URL("desk.css", address))).status).toBe(200);
    desk.end();
    expect(await desk.ended).toBe(0);
  });

  it("gives the same bytes when it computes everything anew", () => {
    const bytes = (out: string) => {
      rmSync(join(installed.folder, ".build"), { recursive: true, force: true });
      const outcome = installed.run("build", "--content", "my-atlas", "--out", out, "--quiet");
      expect(outcome, outcome.stderr).toMatchObject({ status: 0 });
      const files = readdirSync(join(installed.folder, out), { recursive: true, withFileTypes: true }).filter((entry) =>
        entry.isFile(),
      );
      const paths = files.map((entry) => join(entry.parentPath, entry.name)).sort();
      return paths.map((path) => [path.slice(join(installed.folder, out).length), readFileSync(path, "base64")]);
    };
    expect(bytes("second")).toEqual(bytes("third"));
  });

  it("says its version, and ends with 2 on a mistake of its user", () => {
    const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
    expect(installed.run("--version")).toEqual({ status: 0, stdout: `${version}\n`, stderr: "" });
    const wrong = installed.run("build", "--content", "nowhere");
    expect(wrong.status).toBe(2);
    expect(wrong.stdout).toBe("");
    expect(wrong.stderr).toMatch(/nowhere/);
    expect(wrong.stderr).not.toMatch(/\n {4}at /);
  });
});
