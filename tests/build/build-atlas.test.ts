import { cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { buildAtlas } from "../../src/build/build-atlas.ts";
import { keepLog } from "../support/run-scheme.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const TWO_GRIDS = fileURLToPath(new URL("../golden/two-grids/input/", import.meta.url));

/** Builds the small scheme with its settings changed; the pages are never reached. */
async function buildWith(
  from: string,
  to: string,
): Promise<{ error: unknown; log: ReturnType<typeof keepLog>; out: string }> {
  const folder = makeTemporaryFolder();
  const content = join(folder, "scheme");
  cpSync(TWO_GRIDS, content, { recursive: true });
  const settings = readFileSync(join(content, "atlas.yaml"), "utf8");
  expect(settings).toContain(from);
  writeFileSync(join(content, "atlas.yaml"), settings.replace(from, to));
  const log = keepLog();
  const out = join(folder, "atlas");
  const error = await buildAtlas({ content, workFolder: join(folder, "work"), out, base: "/", progress: log }).catch(
    (thrown: unknown) => thrown,
  );
  return { error, log, out };
}

// What it builds, and that a second build does nothing again: tests/build/laws.test.ts and tests/publishing/laws.test.ts.
describe("buildAtlas", () => {
  it.each([
    [
      'edition: { id: "2021.1"',
      'edition: { id: "Latest"',
      "atlas.yaml: edition.id is latest, which always names the newest; give the edition a name of its own",
    ],
    ["coverage:", "basemap: { land: coast.geojson, credit: nobody }\ncoverage:", /coast\.geojson/],
  ])("refuses, before it writes anything, what cannot be published: %s", async (from, to, message) => {
    const { error, log, out } = await buildWith(from, to);
    expect(error).toMatchObject({
      name: "Mistake",
      message: typeof message === "string" ? message : expect.stringMatching(message),
    });
    expect(log.steps).not.toHaveProperty("publish");
    expect(existsSync(out)).toBe(false);
  });

  it("refuses an output folder with files of somebody else's, before it reads a record", async () => {
    const folder = makeTemporaryFolder();
    mkdirSync(join(folder, "theirs"));
    writeFileSync(join(folder, "theirs/thesis.txt"), "chapter 1");
    const log = keepLog();
    const build = buildAtlas({
      content: TWO_GRIDS,
      workFolder: join(folder, "work"),
      out: join(folder, "theirs"),
      base: "/",
      progress: log,
    });
    await expect(build).rejects.toThrow(/holds files that atlaswright did not make/);
    expect(log.steps).toEqual({});
    expect(existsSync(join(folder, "work"))).toBe(false);
  });
});
