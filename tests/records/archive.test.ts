import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readFiles } from "./archive/archives.ts";
import { bytesOf, damagedArchives } from "./archive/mutated-archives.ts";
import { useDatabase } from "./reading.ts";

const database = useDatabase();

describe("an archive with faults in its bytes", () => {
  it("is read or not, and every record in it is accounted for", async () => {
    await fc.assert(
      fc.asyncProperty(damagedArchives, async (damaged) => {
        const { parts, rows } = await readFiles(database(), await bytesOf(damaged));
        expect(parts.length).toBeGreaterThan(0);
        for (const { name, result } of parts) {
          const { records, read, rescued, unreadable, lastRow } = result;
          expect(read + rescued.length + unreadable).toBe(records);
          const own = rows.filter(({ part }) => part === name).map(({ row }) => row);
          expect(own).toHaveLength(read + rescued.length);
          expect(new Set(own).size).toBe(own.length);
          for (const row of own) expect(row).toBeLessThanOrEqual(lastRow);
        }
      }),
      { seed: 20_261_126, numRuns: 25 },
    );
  }, 120_000);
});
