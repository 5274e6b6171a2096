import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, onTestFinished, vi } from "vitest";
import { renderSite } from "../../src/build/render-site.ts";
import { writePublishedFixture } from "../support/published-fixture.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

/** A small atlas rendered in a project of the user's own. */
async function renderFixture(folder: string, name = "site", base = "/") {
  const published = writePublishedFixture(join(folder, "published"), { taxa: 2, bare: true });
  const warnings: string[] = [];
  const pages: number[] = [];
  const outFolder = join(folder, name);
  await renderSite({
    published,
    base,
    workFolder: join(folder, ".build/site-work"),
    outFolder,
    log: (text) => warnings.push(text),
    onPage: (done) => pages.push(done),
  });
  return { outFolder, warnings, pages };
}

function readAll(folder: string): Record<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const paths = files.map((entry) => join(entry.parentPath, entry.name)).sort();
  return Object.fromEntries(paths.map((path) => [path.slice(folder.length), readFileSync(path, "base64")]));
}

describe("renderSite", () => {
  it("writes the pages without a warning and without a word on the console", async () => {
    const spoken = [vi.spyOn(process.stdout, "write"), vi.spyOn(process.stderr, "write"), vi.spyOn(console, "log")];
    const { outFolder, warnings, pages } = await renderFixture(makeTemporaryFolder());
    const words = spoken.flatMap((spy) => spy.mock.calls);
    vi.restoreAllMocks();
    expect(words).toEqual([]);
    expect(warnings).toEqual([]);
    expect(existsSync(join(outFolder, "index.html"))).toBe(true);
    expect(pages.length).toBeGreaterThan(0);
    expect(pages).toEqual(pages.map((_, i) => i + 1));
  });

  it("gives the same bytes twice, also below a package of another module type", async () => {
    const first = await renderFixture(makeTemporaryFolder());
    const folder = makeTemporaryFolder();
    writeFileSync(join(folder, "package.json"), '{ "type": "commonjs" }');
    const second = await renderFixture(folder);
    const again = await renderFixture(folder, "again");
    expect(readAll(second.outFolder)).toEqual(readAll(first.outFolder));
    expect(readAll(again.outFolder)).toEqual(readAll(first.outFolder));
  });

  it("puts addresses under the base, whatever variables the machine has set", async () => {
    vi.stubEnv("BASE_URL", "/elsewhere/");
    onTestFinished(() => void vi.unstubAllEnvs());
    const { outFolder } = await renderFixture(makeTemporaryFolder(), "site", "/atlas/");
    const page = readFileSync(join(outFolder, "index.html"), "utf8");
    const addresses = [...page.matchAll(/ (?:href|src)="(\/[^"]*)"/g)].map((match) => String(match[1]));
    expect(addresses.length).toBeGreaterThan(0);
    expect(addresses.filter((address) => !address.startsWith("/atlas/"))).toEqual([]);
    expect(process.env["BASE_URL"]).toBe("/elsewhere/");
  });

  it("leaves the last pages as they were when a page fails", async () => {
    const folder = makeTemporaryFolder();
    const outFolder = join(folder, "site");
    mkdirSync(outFolder);
    writeFileSync(join(outFolder, "index.html"), "last");
    const options = { published: join(folder, "nowhere"), base: "/", workFolder: join(folder, "work"), outFolder };
    await expect(renderSite({ ...options, log: () => {} })).rejects.toThrow(/ATLAS_PUBLISHED names no folder/);
    expect(readFileSync(join(outFolder, "index.html"), "utf8")).toBe("last");
  });
});
