import { appendFileSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readAll } from "../../src/build/read-stage.ts";
import { openStages } from "../../src/build/stages.ts";
import type { Database } from "../../src/engine/database.ts";
import { Mistake } from "../../src/mistake.ts";
import { source, useDatabase } from "../records/reading.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const database = useDatabase();

/** A database that does something to the records just before they are read. */
function meddling(meddle: () => void): Database {
  const real = database();
  return {
    ...real,
    aside: () => {
      meddle();
      return real.aside();
    },
  };
}

function scheme() {
  const folder = makeTemporaryFolder();
  const path = join(folder, "walks.csv");
  writeFileSync(path, "scientificName,year\nBombus pratorum,2020\n");
  const files = [{ source: source(), path, name: "records/walks.csv" }];
  const read = (from: Database) => readAll(from, openStages(join(folder, "work")), files, () => {});
  return { path, read };
}

describe("a file of records", () => {
  it("is read once, and again when it has changed", async () => {
    const { path, read } = scheme();
    expect(await read(database())).toMatchObject({ reused: 0, read: [{ name: "records/walks.csv" }] });
    expect(await read(database())).toMatchObject({ reused: 1, read: [], files: [{ result: { records: 1 } }] });
    appendFileSync(path, "Bombus lucorum,2021\n");
    expect(await read(database())).toMatchObject({ reused: 0, files: [{ result: { records: 2 } }] });
  });

  it("that grows while it is read stops the build, by its name, and is read afresh the next time", async () => {
    const { path, read } = scheme();
    const growing = read(meddling(() => appendFileSync(path, "Bombus lucorum,2021\n")));
    await expect(growing).rejects.toThrow(
      "records/walks.csv: file records/walks.csv changed while it was read; wait until it is written whole, then run again",
    );
    await expect(growing).rejects.toBeInstanceOf(Mistake);
    expect(await read(database())).toMatchObject({ files: [{ result: { records: 2 } }] });
  });

  it("that is touched while it is read is the same still", async () => {
    const { path, read } = scheme();
    const touched = await read(meddling(() => utimesSync(path, new Date(0), new Date(0))));
    expect(touched).toMatchObject({ files: [{ result: { records: 1 } }] });
  });
});
