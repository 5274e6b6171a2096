import { cpSync } from "node:fs";
import path from "node:path";
import type { Browser } from "playwright-core";
import { type Serving, serve } from "../../src/build/serve.ts";
import { launchBrowser } from "./browser.ts";
import { addMap } from "./map-folder-fixture.ts";
import { renderFixture } from "./rendered-fixture.ts";

/** A whole invented atlas as it would be published, served, and a browser to open it in. */
export interface ServedFixture {
  /** Where it is, with a slash at the end. */
  readonly address: string;
  readonly folder: string;
  readonly browser: Browser;
  readonly end: () => Promise<void>;
}

/** Renders six taxa with a region, the map's files and those of the neighbourhoods, and serves them; the caller ends it. */
export async function serveFixture(languages: readonly string[]): Promise<ServedFixture> {
  const rendered = await renderFixture({ taxa: 6, regions: true, languages }, "/");
  addMap(rendered);
  for (const name of ["identify", "data"])
    cpSync(path.join(rendered.published, name), path.join(rendered.folder, name), { recursive: true });
  const serving: Serving = await serve({ folder: rendered.folder, port: 0 });
  const browser = await launchBrowser();
  return {
    address: serving.address,
    folder: rendered.folder,
    browser,
    end: async () => {
      await browser.close();
      await serving.close();
      rendered.remove();
    },
  };
}
