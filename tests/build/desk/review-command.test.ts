import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it, onTestFinished } from "vitest";
import { makeScheme } from "../../../src/build/make-scheme.ts";
import { readDecisions } from "../../../src/scheme/decisions-file.ts";
import { runCli } from "../../support/run-cli.ts";
import { makeTemporaryFolder } from "../../support/temporary-folder.ts";

const LAUNCHER = fileURLToPath(new URL("../../../src/launch.js", import.meta.url));

/** Starts the desk and waits for its address; `ended` gives its exit code and what it said. */
async function startDesk(folder: string): Promise<{
  address: string;
  stop(signal: NodeJS.Signals): void;
  ended: Promise<{ code: number | null; stderr: string }>;
}> {
  const child = spawn(process.execPath, [LAUNCHER, "review", "--content", "scheme", "--port", "0"], { cwd: folder });
  onTestFinished(() => void child.kill("SIGKILL"));
  let stderr = "";
  child.stderr.on("data", (text) => (stderr += String(text)));
  const ended = new Promise<{ code: number | null; stderr: string }>((done) =>
    child.on("close", (code) => done({ code, stderr })),
  );
  const address = await new Promise<string>((done) => child.stdout.once("data", (text) => done(String(text).trim())));
  return { address, stop: (signal) => void child.kill(signal), ended };
}

describe("atlaswright review", () => {
  it("says what it does, and what it may write", () => {
    const { status, stdout } = runCli(["review", "--help"], { cwd: makeTemporaryFolder() });
    expect(status).toBe(0);
    expect(stdout).toMatch(/it writes\s+decisions\.csv alone/);
    for (const option of ["--content <folder>", "--port <number>", "--memory <size>"]) expect(stdout).toContain(option);
  });

  it.each(["SIGTERM", "SIGINT"] as const)(
    "prints one address, and ends on %s with 0 and its folder free",
    async (signal) => {
      const folder = makeTemporaryFolder();
      makeScheme(join(folder, "scheme"));
      const { address, stop, ended } = await startDesk(folder);
      expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/[\w-]{32}\/$/);
      expect((await fetch(address)).status).toBe(200);
      const { status, stderr } = runCli(["check", "--content", "scheme"], { cwd: folder });
      expect([status, stderr]).toEqual([2, expect.stringContaining("the review desk")]);
      stop(signal);
      const { code, stderr: said } = await ended;
      expect(code).toBe(0);
      expect(said).not.toMatch(/\n {4}at |Warning/);
      expect(existsSync(join(folder, "scheme/decisions.csv"))).toBe(false);
      expect(runCli(["check", "--content", "scheme", "--quiet"], { cwd: folder }).status).toBe(0);
    },
  );

  it("takes a ruling back by the command, while the desk is open too", async () => {
    const folder = makeTemporaryFolder();
    makeScheme(join(folder, "scheme"));
    const { address, stop, ended } = await startDesk(folder);
    const token = new URL(address).pathname.split("/")[1] ?? "";
    const answer = await fetch(`${address}api/rulings`, {
      method: "POST",
      headers: { "x-desk-token": token, "content-type": "application/json" },
      body: JSON.stringify({ ruling: "hold", record: 2, why: "not sure" }),
    });
    const { id } = (await answer.json()) as { id: string };
    const taken = runCli(["take-back", id, "--content", "scheme", "--why", "sure now"], { cwd: folder });
    expect([taken.status, taken.stderr]).toEqual([0, ""]);
    expect(taken.stdout).toContain("Taken back: 1 ruling.");
    const rows = readDecisions(join(folder, "scheme"));
    expect(rows.map(({ ruling, value, why, recordKey }) => [ruling, value, why, recordKey])).toEqual([
      ["hold", "", "not sure", "example:invented-1"],
      ["withdraw", id, "sure now", "example:invented-1"],
    ]);
    const again = runCli(["take-back", id, "--content", "scheme"], { cwd: folder });
    expect([again.status, again.stderr]).toEqual([2, expect.stringContaining("was taken back before")]);
    stop("SIGTERM");
    expect((await ended).code).toBe(0);
  });
});
