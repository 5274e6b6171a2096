import { subscribe, unsubscribe } from "node:diagnostics_channel";
import { cpSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync } from "node:fs";
import { dirname, extname, join, resolve } from "node:path";
import { Mistake } from "../mistake.ts";
import { ASTRO_LOG, type AstroMessage } from "./astro-log.ts";
import { astroOptions } from "./astro-options.ts";
import { prepareWorkFolder } from "./work-folder.ts";

export interface RenderOptions {
  /** Folder of published tables. */
  published: string;
  /** Address prefix the site will be served under, "/" for the top of a host. */
  base: string;
  /** A folder of ours to work in, made if missing; everything Astro writes stays in it. One build at a time. */
  workFolder: string;
  /** Where the finished pages go; replaced, so never a folder of the user's. */
  outFolder: string;
  /** Called with each warning, without a line break. */
  log: (text: string) => void;
  /** Called with the number of pages written so far. */
  onPage?: (done: number) => void;
}

/**
 * What would let the machine's environment into the pages: Astro takes a variable of the name of a constant,
 * BASE_URL for one, for the constant itself.
 */
const HIDDEN_FROM_PAGES: Readonly<Record<string, string | undefined>> = {
  ASSETS_PREFIX: undefined,
  BASE_URL: undefined,
  DEV: undefined,
  MODE: undefined,
  PROD: undefined,
  SITE: undefined,
  SSR: undefined,
  NODE_ENV: "production",
  ASTRO_TELEMETRY_DISABLED: "1",
};

/**
 * Renders the pages of an atlas from its published tables, with Astro, from a copy of the sources: the same tables
 * give the same bytes wherever the program is installed and whatever variables the machine has set.
 *
 * Further languages of the atlas are rendered after it, each into a folder of its own below it.
 *
 * @param options folders, address prefix, and who hears of warnings
 * @throws Error when a page fails; `outFolder` is then as it was
 * @example await renderSite({ published: ".build/published", base: "/", workFolder: ".build/site-work", outFolder: ".build/site", log: console.error })
 */
export async function renderSite({
  published,
  base,
  workFolder,
  outFolder,
  log,
  onPage,
}: RenderOptions): Promise<void> {
  const work = resolve(workFolder);
  const outDir = join(work, "pages");
  prepareWorkFolder(work);
  rmSync(outDir, { recursive: true, force: true });
  const stopListening = listen(log, onPage);
  try {
    const { language, languages } = languagesOf(published);
    await renderLanguage(language, { published, base, top: base, work, outDir });
    for (const tag of languages) {
      const pages = join(work, "pages-of-language");
      await renderLanguage(tag, { published, base: `${base}${tag}/`, top: base, work, outDir: pages });
      moveFolder(pages, join(outDir, tag));
    }
  } finally {
    stopListening();
  }
  moveFolder(outDir, resolve(outFolder));
}

/** One language is one build: a page never asks which language it is in. */
async function renderLanguage(
  language: string,
  {
    published,
    base,
    top,
    work,
    outDir,
  }: { published: string; base: string; top: string; work: string; outDir: string },
): Promise<void> {
  const restore = setEnvironment({
    ...HIDDEN_FROM_PAGES,
    ATLAS_PUBLISHED: resolve(published),
    ATLAS_LANGUAGE: language,
    ATLAS_TOP: top,
  });
  try {
    // Loaded here, because it takes most of a second that no other command needs.
    const { build } = await import("astro");
    await build({
      ...astroOptions({ root: work, outDir, cacheDir: join(work, "astro"), base }),
      configFile: false,
      logLevel: "info",
      logger: { entrypoint: new URL(`./astro-log${extname(import.meta.url)}`, import.meta.url) },
    });
  } finally {
    restore();
  }
}

function languagesOf(published: string): { language: string; languages: readonly string[] } {
  if (!existsSync(published))
    throw new Mistake("ATLAS_PUBLISHED", `names no folder: ${published}`, "give it the folder of published tables");
  return JSON.parse(readFileSync(join(published, "atlas.json"), "utf8")) as ReturnType<typeof languagesOf>;
}

/** Sets variables, or takes them away where undefined. Gives a function that puts back what was. */
function setEnvironment(values: Readonly<Record<string, string | undefined>>): () => void {
  const before = Object.fromEntries(Object.keys(values).map((name) => [name, process.env[name]]));
  for (const [name, value] of Object.entries(values)) {
    if (value === undefined) delete process.env[name];
    else process.env[name] = value;
  }
  return () => void setEnvironment(before);
}

function listen(log: (text: string) => void, onPage: ((done: number) => void) | undefined): () => void {
  let pages = 0;
  const onMessage = (event: unknown): void => {
    const { level, message } = event as AstroMessage;
    if (level === "warn" || level === "error") log(message.trimEnd());
    else if (/[├└]─/.test(message)) onPage?.(++pages);
  };
  subscribe(ASTRO_LOG, onMessage);
  return () => unsubscribe(ASTRO_LOG, onMessage);
}

function moveFolder(from: string, to: string): void {
  rmSync(to, { recursive: true, force: true });
  mkdirSync(dirname(to), { recursive: true });
  try {
    renameSync(from, to);
  } catch {
    cpSync(from, to, { recursive: true });
    rmSync(from, { recursive: true, force: true });
  }
}
