/**
 * Compiles the program for an installed package, since Node reads no TypeScript below node_modules: writes dist/ from
 * src/, all but the site, and copies beside it what the program reads at run time. Runs before `npm pack`.
 */
import { execFileSync } from "node:child_process";
import { cpSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("..", import.meta.url));

/** Files the program reads by a path beside its own. */
const READ_AT_RUN_TIME = /\.(sql|json|csv|geojson|yaml|md)$/;

process.chdir(ROOT);
rmSync("dist", { recursive: true, force: true });
execFileSync(process.execPath, ["node_modules/typescript/bin/tsc", "-p", ".config/tsconfig.dist.json"], {
  stdio: "inherit",
});
for (const entry of readdirSync("src", { recursive: true, withFileTypes: true })) {
  const from = join(entry.parentPath, entry.name);
  const isSite = from.startsWith(join("src", "site"));
  if (entry.isFile() && !isSite && READ_AT_RUN_TIME.test(entry.name))
    cpSync(from, join("dist", from.slice("src/".length)));
}
