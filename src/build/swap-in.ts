import {
  cpSync,
  existsSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  realpathSync,
  renameSync,
  rmdirSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, isAbsolute, join, relative, resolve, sep } from "node:path";
import { Mistake } from "../mistake.ts";

/** Absolute paths of one swap; all but the target stand beside it, in its parent, and only while a swap is under way. */
export interface SwapPlaces {
  target: string;
  /** A copy from another file system, not yet whole. */
  copying: string;
  /** The new atlas, whole. */
  incoming: string;
  /** The old atlas, whole. */
  outgoing: string;
  /** The old atlas while it is taken apart. */
  removing: string;
}

/** Name of the file that marks a folder as ours to replace. */
export const MARKER = ".atlaswright";

const MARKER_TEXT = "This folder is written by atlaswright. The next build replaces all of it.\n";

/**
 * Puts a finished folder in the place of the last one. `target` holds the whole old atlas or the whole new one, but
 * for the moment between two renames; a process killed in that moment leaves both beside it, whole, and the next
 * call of this function or of `healSwap` puts one in place.
 *
 * @param built absolute or relative path of a finished folder; gone afterwards
 * @param target where the atlas is to stand; its parents are made, a link to a folder is followed
 * @throws Mistake when the target is a file, or a folder with anything in it that this function did not put there
 * @example swapIn(".build/site", "atlas") // atlas/ is what .build/site was, and atlas/.atlaswright marks it
 */
export function swapIn(built: string, target: string): void {
  const place = healSwap(target);
  refuseForeignFolder(target);
  mkdirSync(dirname(place.target), { recursive: true });
  writeFileSync(join(built, MARKER), MARKER_TEXT);
  moveWhole(built, place.incoming, place.copying);
  if (isOurs(place.target)) renameSync(place.target, place.outgoing);
  else if (existsSync(place.target)) rmdirSync(place.target);
  renameSync(place.incoming, place.target);
  if (existsSync(place.outgoing)) renameSync(place.outgoing, place.removing);
  remove(place.removing);
}

/**
 * Finishes or undoes a swap that was interrupted: afterwards nothing stands beside the target, and the target holds
 * a whole atlas if it ever held one. Without an interrupted swap nothing happens.
 *
 * @param target as for `swapIn`; it need not exist
 * @returns where the next swap puts things
 * @example healSwap("atlas").incoming // "/home/ann/.atlas.incoming"
 */
export function healSwap(target: string): SwapPlaces {
  const place = placesOf(target);
  remove(place.copying);
  for (const whole of [place.incoming, place.outgoing]) {
    if (!isOurs(whole)) continue;
    remove(place.removing);
    renameSync(whole, existsSync(place.target) ? place.removing : place.target);
  }
  remove(place.removing);
  return place;
}

/**
 * Refuses a target that may not be replaced. Call it before a long build, so that the refusal comes first.
 *
 * @param target as for `swapIn`; one that does not exist, or is empty, is fine
 * @param scheme the scheme's folder, which must neither lie in the target nor keep what is private there
 * @throws Mistake when it is a file, a link to nothing, holds the current folder or the scheme's, is its review folder, or
 *   holds files and no marker
 * @example refuseForeignFolder("content") // throws Mistake "output content holds files that atlaswright did not make; …"
 */
export function refuseForeignFolder(target: string, scheme?: string): void {
  const real = followLink(resolve(target));
  const refuse = (found: string, wayOut: string) => {
    throw new Mistake("output", `${target} ${found}`, wayOut);
  };
  if (scheme !== undefined) {
    const content = followLink(resolve(scheme));
    if (contains(real, content))
      refuse("holds the scheme's folder, which a build would replace", "name another folder with --out");
    if (contains(join(content, "review"), real))
      refuse("is where what is private is kept", "name a folder outside the scheme's review folder with --out");
  }
  if (!existsSync(real)) {
    if (lstatSync(real, { throwIfNoEntry: false })?.isSymbolicLink() === true)
      refuse("is a link to nothing", "make the folder it points to, or name another with --out");
    return;
  }
  if (!lstatSync(real).isDirectory()) refuse("is a file", "name a folder with --out");
  if (contains(real, process.cwd())) refuse("holds the current folder", "name a folder inside it with --out");
  const names = readdirSync(real);
  if (names.length > 0 && !names.includes(MARKER))
    refuse(
      "holds files that atlaswright did not make",
      "name a new or empty folder with --out, or empty this one yourself",
    );
}

/** Renames where both are on one file system, else copies to `partial` first, so that `to` is always whole. */
function moveWhole(from: string, to: string, partial: string): void {
  try {
    renameSync(from, to);
  } catch (error) {
    if (!(error instanceof Error && "code" in error && error.code === "EXDEV")) throw error;
    try {
      cpSync(from, partial, { recursive: true });
    } catch (failure) {
      // The other disk may be full: what was begun there only takes more of it.
      remove(partial);
      throw failure;
    }
    renameSync(partial, to);
    remove(from);
  }
}

function placesOf(target: string): SwapPlaces {
  const real = followLink(resolve(target));
  const beside = (state: string) => join(dirname(real), `.${basename(real)}.${state}`);
  return {
    target: real,
    copying: beside("copying"),
    incoming: beside("incoming"),
    outgoing: beside("outgoing"),
    removing: beside("removing"),
  };
}

function remove(folder: string): void {
  if (existsSync(folder)) rmSync(folder, { recursive: true, force: true });
}

function contains(folder: string, path: string): boolean {
  const way = relative(folder, path);
  return way.split(sep)[0] !== ".." && !isAbsolute(way);
}

function isOurs(folder: string): boolean {
  return existsSync(join(folder, MARKER));
}

function followLink(path: string): string {
  return existsSync(path) ? realpathSync(path) : path;
}
