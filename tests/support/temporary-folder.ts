import { mkdtempSync, realpathSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";

/** An empty folder of the running test's own, gone when the test ends. Gives its absolute real path. */
export function makeTemporaryFolder(): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), "atlaswright-test-")));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
