import { spawn, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, it, onTestFinished } from "vitest";
import { lockFolder } from "../../src/build/lock.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const MODULE = pathToFileURL(join(import.meta.dirname, "../../src/build/lock.ts")).href;

/** Arguments that take the lock in another process, which then runs the given code. */
function lockThen(folder: string, code: string): string[] {
  return [
    "--input-type=module",
    "--eval",
    `import { lockFolder } from "${MODULE}"; lockFolder(${JSON.stringify(folder)}); ${code}`,
  ];
}

describe("lockFolder", () => {
  it("makes the folder, holds it, and gives it free", () => {
    const folder = join(makeTemporaryFolder(), ".build");
    const free = lockFolder(folder);
    expect(existsSync(join(folder, "lock"))).toBe(true);
    free();
    expect(existsSync(join(folder, "lock"))).toBe(false);
  });

  it("refuses while another process has it", async () => {
    const folder = makeTemporaryFolder();
    const other = spawn(process.execPath, lockThen(folder, 'console.log("locked"); setInterval(() => {}, 1000);'));
    onTestFinished(() => void other.kill());
    await new Promise((locked) => other.stdout.once("data", locked));
    expect(() => lockFolder(folder)).toThrow(
      `this scheme is in use by a build, a check or the review desk, in process ${other.pid}; wait for it, or end it and run this again`,
    );
  });

  it("takes over from a process that was killed, and from a lock that cannot be read", () => {
    const folder = makeTemporaryFolder();
    const killed = spawnSync(process.execPath, lockThen(folder, 'process.kill(process.pid, "SIGKILL");'));
    expect(killed.signal).toBe("SIGKILL");
    expect(existsSync(join(folder, "lock"))).toBe(true);
    lockFolder(folder)();

    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, "lock"), "");
    lockFolder(folder)();
    expect(existsSync(join(folder, "lock"))).toBe(false);
  });

  it("leaves no lock behind a process that ends by itself", () => {
    const folder = makeTemporaryFolder();
    expect(spawnSync(process.execPath, lockThen(folder, "process.exit(3);")).status).toBe(3);
    expect(existsSync(join(folder, "lock"))).toBe(false);
  });
});
