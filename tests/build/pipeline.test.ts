import {
  appendFileSync,
  cpSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { runScheme } from "../support/run-scheme.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const TWO_GRIDS = fileURLToPath(new URL("../golden/two-grids/input/", import.meta.url));
const REUSED = { read: "reused", interpret: "reused", review: "reused", measure: "reused" };

/** A scheme of the test's own that has been measured once. */
async function measuredOnce() {
  const folder = makeTemporaryFolder();
  const content = join(folder, "scheme");
  cpSync(TWO_GRIDS, content, { recursive: true });
  const again = async () => (await runScheme(content, folder, { tables: false })).log.steps;
  expect(await again()).toEqual({ read: "done", interpret: "done", review: "done", measure: "done" });
  const edit = (file: string, from: string, to: string) => {
    const path = join(content, file);
    const text = readFileSync(path, "utf8");
    expect(text).toContain(from);
    writeFileSync(path, text.replace(from, to));
  };
  return { folder, content, again, edit };
}

describe("measureScheme", () => {
  it("does nothing again for new texts: of a species, of the atlas, of a source, of names in lists", async () => {
    const { content, again, edit } = await measuredOnce();
    mkdirSync(join(content, "species"));
    writeFileSync(join(content, "species/album.md"), "---\ntaxonID: album\n---\n## Habitat\n\nGardens.\n");
    expect(await again()).toEqual(REUSED);
    edit("species/album.md", "Gardens", "Heaths");
    edit("atlas.yaml", "title: Two Grids", "title: Two other Grids");
    edit("atlas.yaml", "title: Museum", "title: Collection");
    expect(await again()).toEqual(REUSED);
  });

  it("measures again under other rules of coverage and change, from the records as they were interpreted", async () => {
    const { again, edit } = await measuredOnce();
    edit("atlas.yaml", "minimum_visits: 2", "minimum_visits: 1");
    expect(await again()).toEqual({ ...REUSED, measure: "done" });
    edit("atlas.yaml", "change: { minimum_comparable_squares: 2", "change: { minimum_comparable_squares: 9");
    expect(await again()).toEqual({ ...REUSED, measure: "done" });
  });

  it("interprets again under another rule of placing, from the files as they were read", async () => {
    const { again, edit } = await measuredOnce();
    edit("atlas.yaml", "coverage:", "placing: { minimum_overlap: 0.5 }\ncoverage:");
    expect(await again()).toEqual({ read: "reused", interpret: "done", review: "done", measure: "done" });
  });

  it("reads only the file that changed, and none that was only touched", async () => {
    const { folder, content, again } = await measuredOnce();
    const museum = join(content, "records/museum.csv");
    utimesSync(museum, 1, 1);
    expect(await again()).toEqual(REUSED);
    const before = rowsRead(folder);
    appendFileSync(museum, "r41,Exemplum viride,1995,SK12,\n");
    const { log, answer } = await runScheme(content, folder, { tables: false });
    expect(log.steps).toEqual({ read: "done", interpret: "done", review: "done", measure: "done" });
    expect(answer.records.read).toBe(41);
    const after = rowsRead(folder);
    expect([before.length, after.length, after.filter((file) => before.includes(file)).length]).toEqual([2, 2, 1]);
  });

  it("gives the same answer from reused stages as from new ones", async () => {
    const { folder, content } = await measuredOnce();
    const reused = await runScheme(content, folder, { tables: false });
    const fresh = await runScheme(content, join(folder, "elsewhere"), { tables: false });
    expect([reused.log.steps["measure"], fresh.log.steps["measure"]]).toEqual(["reused", "done"]);
    expect(reused.answer).toEqual(fresh.answer);
  });
});

/** The rows that are kept of each file, with when they were written: a file that is read again has others. */
function rowsRead(folder: string): string[] {
  const read = join(folder, "work/read");
  return readdirSync(read).map((name) => `${name} ${statSync(join(read, name, "rows.parquet")).mtimeMs}`);
}
