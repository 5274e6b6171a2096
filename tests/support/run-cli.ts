import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const LAUNCHER = fileURLToPath(new URL("../../src/launch.js", import.meta.url));

/** Runs the program to its end, with stdout and stderr no terminals. */
export function runCli(
  words: readonly string[],
  { cwd }: { cwd: string },
): { status: number | null; stdout: string; stderr: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [LAUNCHER, ...words], { cwd, encoding: "utf8" });
  return { status, stdout, stderr };
}
