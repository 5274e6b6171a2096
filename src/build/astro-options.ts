import path from "node:path";
import type { AstroInlineConfig } from "astro";

type VitePlugin = Extract<
  NonNullable<NonNullable<AstroInlineConfig["vite"]>["plugins"]>[number],
  { readonly name: string }
>;

/** Where Vite keeps the code it would put round every import on request: an eighth of a page's styles and script. */
const HELPER = "\0vite/preload-helper.js";

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
    vite: {
      cacheDir: path.join(cacheDir, "vite"),
      plugins: [plainImports()],
      build: { assetsInlineLimit: 0, chunkSizeWarningLimit: 1200, modulePreload: false },
    },
  };
}

/**
 * Makes an import on request a plain `import()`. Vite would wrap each so that styles and further chunks are fetched
 * ahead; no script of the site has any, and one that came to have styles would miss them, so that stops the build.
 *
 * @returns a plugin for Vite
 * @example plainImports().name // "atlaswright:plain-imports"
 */
export function plainImports(): VitePlugin {
  return {
    name: "atlaswright:plain-imports",
    enforce: "pre",
    load: (id) => (id === HELPER ? "export const __vitePreload = (load) => load();" : undefined),
    generateBundle(_, bundle) {
      for (const chunk of Object.values(bundle))
        if (chunk.type === "chunk" && chunk.code.includes("__vite__mapDeps("))
          throw new Error(`${chunk.fileName} imports on request a module with styles; import the styles as ?url`);
    },
  };
}
