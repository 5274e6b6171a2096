import path from "node:path";
import { defineConfig } from "astro/config";
import { astroOptions } from "./src/build/astro-options.ts";

const root = import.meta.dirname;

export default defineConfig(
  astroOptions({
    root,
    outDir: process.env.ATLAS_SITE ?? path.join(root, ".build", "site"),
    cacheDir: path.join(root, ".build", "astro"),
    base: process.env.ATLAS_BASE ?? "/",
  }),
);
