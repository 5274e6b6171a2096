import { spawnSync } from "node:child_process";

/** True when PROJ's `cs2cs` is on PATH. */
export const HAS_CS2CS = spawnSync("cs2cs", [], { input: "" }).error === undefined;

/** For titles of live comparisons, which compare nothing where there is nothing to compare with. */
export const CS2CS_NOTE = HAS_CS2CS ? "" : " (cs2cs is not on PATH: nothing compared here)";

/**
 * Transforms positions with PROJ's `cs2cs`.
 *
 * @param from PROJ definition or EPSG code
 * @param to PROJ definition or EPSG code
 * @param positions in the axis order of `from`
 * @returns positions in the axis order of `to`, to nine decimals; none where cs2cs is missing
 */
export function cs2cs(from: string, to: string, positions: readonly (readonly [number, number])[]): [number, number][] {
  if (!HAS_CS2CS) return [];
  const input = positions.map(([a, b]) => `${a} ${b}`).join("\n");
  const run = spawnSync("cs2cs", ["-f", "%.9f", ...from.split(" "), "+to", ...to.split(" ")], {
    input: `${input}\n`,
    encoding: "utf8",
    env: { ...process.env, PROJ_NETWORK: "OFF" },
  });
  if (run.status !== 0) throw new Error(`cs2cs: ${run.stderr}`);
  return run.stdout
    .trimEnd()
    .split("\n")
    .map((line) => line.trim().split(/\s+/).slice(0, 2).map(Number) as [number, number]);
}
