import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { measureScheme } from "../../src/build/pipeline.ts";
import { accountingFile } from "../../src/publishing/accounting-file.ts";
import { publish } from "../../src/publishing/publish.ts";
import { keepLog } from "../support/run-scheme.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const TWO_GRIDS = fileURLToPath(new URL("../golden/two-grids/input/", import.meta.url));

describe("accountingFile", () => {
  it("adds up for every source, and stops the build where it does not", async () => {
    const folder = makeTemporaryFolder();
    const { database, scheme, read } = await measureScheme({
      content: TWO_GRIDS,
      workFolder: join(folder, "work"),
      progress: keepLog(),
    });
    const accounting = await accountingFile(database, scheme, read);
    // 37 and 3 rows of the two files, by counting their lines.
    expect(Object.fromEntries(read)).toEqual({ walks: 37, museum: 3 });
    expect(accounting.read).toBe(40);
    expect(accounting.rows.reduce((sum, { records }) => sum + records, 0)).toBe(40);
    expect(accounting.sources.map(({ source, read: rows, used }) => [source, rows, used])).toEqual([
      ["walks", 37, 28],
      ["museum", 3, 1],
    ]);

    const oneMore = new Map([...read, ["museum", 4]]);
    await expect(accountingFile(database, scheme, oneMore)).rejects.toThrow(
      "the accounting of source museum does not add up: 4 read, 3 accounted for",
    );
    await database.run(
      "CREATE OR REPLACE TABLE doctored AS SELECT * FROM accounting WHERE reason <> 'name_unknown'; DROP VIEW accounting; ALTER TABLE doctored RENAME TO accounting",
    );
    await expect(publish(database, scheme, { folder: join(folder, "published"), read })).rejects.toThrow(
      "the accounting of source walks does not add up: 37 read, 36 accounted for",
    );
    database.close();
  });
});
