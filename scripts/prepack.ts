/**
 * Compiles the program for an installed package, since Node reads no TypeScript below node_modules: writes dist/ from
 * src/, all but the site, and copies the SQL and tables that stand beside their callers. Runs before `npm pack`.
 */
import { execFileSync } from "node:child_process";
import { cpSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("..", import.meta.url));

process.chdir(ROOT);
rmSync("dist", { recursive: true, force: true });
execFileSync(process.execPath, ["node_modules/typescript/bin/tsc", "-p", ".config/tsconfig.dist.json"], {
  stdio: "inherit",
});
for (const path of readdirSync("src", { recursive: true, encoding: "utf8" })) {
  if (/\.(sql|json|css|html|js)$/.test(path) && !/^(site|build[\\/]template)[\\/]|^launch\.js$/.test(path))
    cpSync(join("src", path), join("dist", path));
}
