import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";

/** What a language keeps on a device from its first visit on. */
export interface OfflineList {
  readonly edition: string;
  /** Path from the top of the atlas, as the browser asks for it, and a hash of the content; sorted. */
  readonly files: readonly (readonly [path: string, hash: string])[];
}

/** Pages that are of use outdoors, whatever was visited; and what their scripts fetch. */
const PAGES = [
  "",
  "offline/",
  "narrow/",
  "tell-apart/",
  "tell-apart/outside/",
  "practice/",
  "practice/sheet/",
  "find/",
  "in-season/",
  "take-part/",
  "species/",
  "safety/",
];
const FILES = ["scheme.css", "mark.svg", "identify.json", "search.json"];
/** Shared by all languages. */
const SHARED = ["identify"];
/** Above this many, accounts are kept when they are visited. */
const MOST_ACCOUNTS = 300;
/** A larger script or style belongs to the interactive map, which needs its tiles from the network. */
const LARGEST_ASSET = 200_000;

/**
 * The list of one language: pages for the field, all accounts of an atlas of up to 300, and the styles, scripts, fonts
 * and tables these need.
 *
 * @param atlas folder of the whole atlas
 * @param language folder of a further language; empty for the first
 * @param edition id of the edition
 * @returns files that are there, sorted by path
 * @example offlineList("atlas", "fr", "2025.1").files[0]?.[0] // "fr/"
 */
export function offlineList(atlas: string, language: string, edition: string): OfflineList {
  const folder = join(atlas, language);
  const prefix = language === "" ? "" : `${language}/`;
  const paths = [
    ...[...PAGES, ...accounts(folder)].filter((path) => existsSync(join(folder, path, "index.html"))),
    ...FILES.filter((path) => existsSync(join(folder, path))),
    ...filesBelow(folder, "fonts").filter((path) => path.endsWith(".woff2")),
    ...filesBelow(folder, "_astro").filter((path) => statSync(join(folder, path)).size <= LARGEST_ASSET),
  ].map((path) => `${prefix}${path}`);
  const shared = SHARED.flatMap((name) => filesBelow(atlas, name));
  const files = [...new Set([...paths, ...shared])].sort().map((path) => [path, hashOf(join(atlas, path))] as const);
  return { edition, files };
}

function accounts(folder: string): string[] {
  const species = join(folder, "species");
  if (!existsSync(species)) return [];
  const slugs = readdirSync(species, { withFileTypes: true }).filter(
    (entry) => entry.isDirectory() && !entry.name.startsWith("by-"),
  );
  return slugs.length > MOST_ACCOUNTS ? [] : slugs.map(({ name }) => `species/${name}/`);
}

function filesBelow(folder: string, name: string): string[] {
  const below = join(folder, name);
  if (!existsSync(below)) return [];
  return readdirSync(below, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length).replaceAll("\\", "/").replace(/^\//, ""));
}

function hashOf(path: string): string {
  const file = statSync(path).isDirectory() ? join(path, "index.html") : path;
  return createHash("sha256").update(readFileSync(file)).digest("hex").slice(0, 12);
}
