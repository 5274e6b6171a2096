import { describe, expect, it, onTestFinished } from "vitest";
import { fileKind } from "../../scripts/fuzz/kinds/files.ts";
import { VALUE_KINDS } from "../../scripts/fuzz/kinds/index.ts";
import { dayByClock, mondayOfWeek } from "../../scripts/fuzz/oracle/days.ts";
import { squareHolding } from "../../scripts/fuzz/oracle/lettering.ts";
import { numberByCharacters } from "../../scripts/fuzz/oracle/number.ts";
import { shareByClipping } from "../../scripts/fuzz/oracle/overlap.ts";
import { project, SYSTEMS, unproject } from "../../scripts/fuzz/oracle/projection.ts";
import { readByTable } from "../../scripts/fuzz/oracle/read-letters.ts";
import { gridUsedAt } from "../../scripts/fuzz/oracle/territories.ts";
import { runKind } from "../../scripts/fuzz/run-kind.ts";
import type { Kind } from "../../scripts/fuzz/trial.ts";
import { filesBelow, importsOf } from "../project/source-files.ts";

/** Cases of each kind here; the script tries a million. */
const CASES = 1_500;
const FILES = 40;

describe("nothing is read wrongly, crashes or hangs", () => {
  it.each(VALUE_KINDS)("among $name", async (kind) => {
    const { counterexamples, accepted, refused } = await runKind(kind, { seed: 1, from: 0, to: CASES });
    expect(counterexamples).toEqual([]);
    expect(accepted).toBeGreaterThan(CASES / 10);
    expect(refused).toBeGreaterThan(CASES / 20);
  });

  it("among damaged files of every format", async () => {
    const kind = await fileKind();
    onTestFinished(() => kind.close());
    const { counterexamples, cases } = await runKind(kind as Kind, { seed: 1, from: 0, to: FILES });
    expect(counterexamples).toEqual([]);
    expect(cases).toBe(FILES);
  });
});

describe("a run", () => {
  const kind: Kind<number> = {
    name: "numbers",
    share: 1,
    draw: (random) => random.whole(0, 9),
    judge: (number) => {
      if (number === 0) throw new Error("nought");
      return number === 1 ? { answer: "refused", wrong: "one" } : { answer: "accepted" };
    },
  };

  it("counts what is wrong and what crashes, shows it, and gives the same case for the same seed", async () => {
    const all = await runKind(kind as Kind, { seed: 5, from: 0, to: 200 });
    expect(all.cases).toBe(200);
    expect(all.accepted + all.refused + all.crashed).toBe(200);
    expect([all.wrong > 0, all.crashed > 0, all.counterexamples.length]).toEqual([true, true, 5]);
    const [first] = all.counterexamples;
    const again = await runKind(kind as Kind, { seed: 5, from: first?.index ?? 0, to: (first?.index ?? 0) + 1 });
    expect(again.counterexamples.map(({ input }) => input)).toEqual([first?.input]);
  });
});

describe("the other computations", () => {
  it("take nothing from the program they judge", () => {
    const imports = filesBelow("scripts/fuzz/oracle").map((file) => [file, importsOf(file)] as const);
    expect(imports.length).toBeGreaterThan(5);
    for (const [, from] of imports) expect(from.filter((one) => /^src\//.test(one))).toEqual([]);
  });

  it("project as published", () => {
    // Ordnance Survey, "A guide to coordinate systems in Great Britain", annex C: Caister water tower, on OSGB36 itself.
    const britain = { ...(SYSTEMS["british"] as (typeof SYSTEMS)[string]) };
    const [east, north] = project(britain, ...unproject(britain, 651_409.903, 313_177.27));
    expect([east, north]).toEqual([expect.closeTo(651_409.903, 3), expect.closeTo(313_177.27, 3)]);
    // Transit circle of Greenwich: TQ 38880 77340, WGS84 51.4778 N 0.0015 W, to the shift's 5 m and four decimals' 8 m.
    const [x, y] = project(britain, -0.0015, 51.4778);
    expect(Math.hypot(x - 538_880, y - 177_340)).toBeLessThan(20);
    // The Spire of Dublin: 53.3498 N 6.2603 W is O 15904 34671.
    const [e, n] = project(SYSTEMS["irish"] as (typeof SYSTEMS)[string], -6.2603, 53.3498);
    expect(Math.hypot(e - 315_904, n - 234_671)).toBeLessThan(20);
  });

  it("read, slice and letter as published", () => {
    expect(readByTable("british", "tq 388,773")).toEqual({ east: 538_800, north: 177_300, size: 100 });
    expect(readByTable("irish", "O15SW")).toEqual({ east: 310_000, north: 250_000, size: 5_000 });
    expect(readByTable("british", "TQ 388 7")).toBeUndefined();
    expect(squareHolding("british", 538_880, 177_340, 2_000)).toBe("TQ37Y");
  });

  it("cut a circle in halves and quarters", () => {
    expect(shareByClipping(0, 0, 10, 0, 0, 100)).toBeCloseTo(0.25, 5);
    expect(shareByClipping(0, 50, 10, 0, 0, 100)).toBeCloseTo(0.5, 5);
    expect(shareByClipping(50, 50, 10, 0, 0, 100)).toBeCloseTo(1, 5);
    // A square inside its circumscribed circle: 2/π of it.
    expect(shareByClipping(50, 50, Math.SQRT2 * 50, 0, 0, 100)).toBeCloseTo(2 / Math.PI, 4);
  });

  it("know days, numbers and territories", () => {
    expect(dayByClock(2000, 3, 1)).toBe(11_017);
    expect(dayByClock(1900, 2, 29)).toBeUndefined();
    expect(mondayOfWeek(2020, 53)).toBe(dayByClock(2020, 12, 28));
    expect(mondayOfWeek(2021, 53)).toBeUndefined();
    expect(["51,5", "+-1", "1e400", "−.5", "5e1"].map(numberByCharacters)).toEqual([
      51.5,
      undefined,
      undefined,
      -0.5,
      50,
    ]);
    expect([gridUsedAt(-1.5, 52.5), gridUsedAt(-6.26, 53.35), gridUsedAt(-30, 40)]).toEqual([
      "british",
      "irish",
      undefined,
    ]);
  });
});
