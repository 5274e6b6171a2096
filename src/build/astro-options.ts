import path from "node:path";
import type { AstroInlineConfig } from "astro";

/** Where a site build reads and writes: absolute folders, and the address prefix the site is served under. */
export interface SitePlaces {
  /** Folder that holds `src/site`; Astro writes its own notes to `.astro` inside it, so it must be writable. */
  readonly root: string;
  readonly outDir: string;
  readonly cacheDir: string;
  /** Address prefix, "/" for the top of a host, "/atlas/" for a sub-path. */
  readonly base: string;
}

/**
 * The options of every build of the site, from the command line and from the engine alike.
 * Styles and assets are never inlined, because the pages forbid inline styles and scripts.
 *
 * @param places absolute folders and the address prefix
 * @returns options for Astro's `build`, `dev` and `preview`
 * @example astroOptions({ root: "/w", outDir: "/w/site", cacheDir: "/w/astro", base: "/" }).srcDir // "/w/src/site"
 */
export function astroOptions({ root, outDir, cacheDir, base }: SitePlaces): AstroInlineConfig {
  const srcDir = path.join(root, "src", "site");
  return {
    root,
    srcDir,
    publicDir: path.join(srcDir, "public"),
    outDir,
    cacheDir,
    base,
    output: "static",
    trailingSlash: "always",
    compressHTML: true,
    devToolbar: { enabled: false },
    build: { format: "directory", inlineStylesheets: "never" },
    vite: { cacheDir: path.join(cacheDir, "vite"), build: { assetsInlineLimit: 0, chunkSizeWarningLimit: 1200 } },
  };
}
