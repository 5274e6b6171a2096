import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { Mistake } from "../../mistake.ts";

/** A browser that prints: its program, and what its environment must hold beside our own. */
export interface PrintingBrowser {
  readonly program: string;
  readonly environment?: Readonly<Record<string, string>>;
}

/** Programs of Chromium and its kin on a PATH, by the names systems give them. */
const ON_PATH = [
  "chromium",
  "chromium-browser",
  "chromium-headless-shell",
  "google-chrome",
  "google-chrome-stable",
  "chrome",
  "msedge",
];

/** Where the usual installers put them, off the PATH. */
const ELSEWHERE = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

/**
 * The browser that prints the book: the one named, else an installed Chromium or one of its kin.
 *
 * @param named path of a program, or undefined
 * @param path folders to look through, as the variable PATH
 * @throws {Mistake} where there is none
 * @example findBrowser(undefined, "/usr/bin").program // "/usr/bin/chromium"
 */
export function findBrowser(named: string | undefined, path = process.env["PATH"] ?? ""): PrintingBrowser {
  if (named !== undefined) {
    if (existsSync(named)) return { program: named };
    throw new Mistake("--browser", `is not there: ${named}`, "name the program of a Chromium, or leave the option out");
  }
  const folders = path.split(delimiter).filter(Boolean);
  const endings = process.platform === "win32" ? [".exe"] : [""];
  const candidates = [
    ...folders.flatMap((folder) => ON_PATH.flatMap((name) => endings.map((ending) => join(folder, name + ending)))),
    ...ELSEWHERE,
  ];
  const program = candidates.find((file) => existsSync(file));
  if (program !== undefined) return { program };
  throw new Mistake(
    "Chromium",
    "is not installed, and the book is printed by it",
    "install it (on Debian: apt-get install chromium), or name another with --browser PATH",
  );
}
