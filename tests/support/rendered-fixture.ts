import { mkdtempSync, realpathSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { renderSite } from "../../src/build/render-site.ts";
import { type FixtureShape, writePublishedFixture } from "./published-fixture.ts";

/** A site rendered from invented tables, for a whole file of tests. */
export interface RenderedFixture {
  readonly published: string;
  readonly folder: string;
  readonly warnings: readonly string[];
  readonly remove: () => void;
}

/** Writes invented tables and renders their site under an address prefix; the caller removes it. */
export async function renderFixture(shape: FixtureShape, base: string): Promise<RenderedFixture> {
  const top = realpathSync(mkdtempSync(path.join(tmpdir(), "atlaswright-site-")));
  const [published, folder] = [path.join(top, "published"), path.join(top, "site")];
  const warnings: string[] = [];
  writePublishedFixture(published, shape);
  await renderSite({
    published,
    base,
    workFolder: path.join(top, "work"),
    outFolder: folder,
    log: (text) => warnings.push(text),
  });
  return { published, folder, warnings, remove: () => rmSync(top, { recursive: true, force: true }) };
}
