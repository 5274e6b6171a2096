import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BOOK_SHAPES, type BookClass, centredSquare, dashes, HATCH_PARTS } from "../../../src/site/maps/book-cell.ts";
import { runsPath, shapesPath } from "../../../src/site/maps/cell-paths.ts";
import { filledArea, readPath } from "../../support/path-reader.ts";

const corner = (d: string) => readPath(d).map(({ points }) => points[0]);
const size = ({ points }: { points: [number, number][] }) => {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)].map((number) =>
    Number(number.toFixed(6)),
  );
};
const cell = { column: 3, row: 2 };

describe("examples", () => {
  it("draws a whole square", () => {
    expect(shapesPath([{ column: 2, row: 0 }], { x: 0.25, y: 0.25, width: 3.5, height: 3.5 })).toBe(
      "M8.25.25h3.5v3.5h-3.5z",
    );
  });
  it("joins neighbours into runs", () => {
    expect(
      runsPath(
        [
          { column: 0, row: 0 },
          { column: 1, row: 0 },
          { column: 3, row: 0 },
        ],
        4,
      ),
    ).toBe("M0 2h8m4 0h4");
  });
  it("dashes a page, and a whole cell not at all", () => {
    expect(dashes(1.5, 3.5)).toBe(' stroke-dasharray="0.5 0.5" stroke-dashoffset="-0.375"');
    expect(dashes(0, 4)).toBe("");
  });
});

/* The drawing rules of a cell of 4 × 4 units, as the project's own design states them: position, size and share of ink. */
describe("a square as a small book", () => {
  const rules: [BookClass, [number, number], [number, number], number][] = [
    ["both", [0.25, 0.25], [3.5, 3.5], 12.25],
    ["new", [0.25, 0.25], [3.5, 3.5], 12.25 - 0.75 * 2.7],
    ["gone", [0.25, 0.25], [3.5, 3.5], 12.25 - 1.95 * 2.9],
    ["since", [1.5, 0.25], [2.25, 3.5], 2.25 * 3.5],
    ["before", [0.25, 0.25], [1.25, 3.5], 1.25 * 3.5],
  ];
  it.each(rules)("draws %s at its place, in its size, with its ink", (kind, [x, y], [width, height], area) => {
    const d = shapesPath([cell], BOOK_SHAPES[kind]);
    const [outer] = readPath(d);
    expect(outer?.points[0]).toEqual([12 + x, 8 + y]);
    expect(outer && size(outer)).toEqual([width, height]);
    expect(filledArea(d)).toBeCloseTo(area, 9);
  });

  it("gives whole, newly found and not refound squares 77, 64 and 41 % of ink", () => {
    const share = (kind: BookClass) => Math.round((filledArea(shapesPath([cell], BOOK_SHAPES[kind])) / 16) * 100);
    expect([share("both"), share("new"), share("gone")]).toEqual([77, 64, 41]);
  });

  it("leaves a frame of .4 round the open spine and of .3 round the open page", () => {
    const [, spine] = readPath(shapesPath([{ column: 0, row: 0 }], BOOK_SHAPES.new));
    expect(spine?.points[0]?.map((number) => Number(number.toFixed(3)))).toEqual([0.65, 0.65]);
    const [, page] = readPath(shapesPath([{ column: 0, row: 0 }], BOOK_SHAPES.gone));
    expect(page && size(page)).toEqual([1.95, 2.9]);
    expect(page?.points[0]?.map((number) => Number(number.toFixed(3)))).toEqual([1.5, 0.55]);
  });

  /* A dash is drawn where (place along the stroke + offset) modulo the pattern is below the dash's length: SVG 2 §13.5.7. */
  it.each([
    ...(["both", "since", "before"] as const).map((kind) => {
      const { x, width } = BOOK_SHAPES[kind];
      return [kind, x, x + width] as const;
    }),
    ...(["spine", "page"] as const).map((part) => [`hatched ${part}`, ...HATCH_PARTS[part]] as const),
  ])("draws %s in every cell of a run by dashes, from %d to %d of 4", (_, from, to) => {
    const numbers = [...dashes(from, to).matchAll(/-?[\d.]+(?=[" ])/g)].map(([text]) => Number(text));
    const [dash = 0, gap = 0, offset = 0] = numbers;
    const isDrawn = (along: number) => (((along + offset) % (dash + gap)) + (dash + gap)) % (dash + gap) < dash;
    for (let at = 0.017; at < 12; at += 0.03) expect(isDrawn(at / 4), String(at)).toBe(at % 4 >= from && at % 4 < to);
  });

  it("grows a number's square about the middle of its cell", () => {
    for (const side of [0.9, 1.6, 2.3, 2.95, 3.5]) {
      const [square] = readPath(shapesPath([{ column: 0, row: 0 }], centredSquare(side)));
      expect(square && size(square)).toEqual([side, side]);
      expect(square?.points[0]?.[0]).toBeCloseTo((4 - side) / 2, 3);
    }
  });
});

const cells = fc.uniqueArray(fc.record({ column: fc.nat(40), row: fc.nat(40) }), {
  selector: ({ column, row }) => `${column} ${row}`,
  maxLength: 120,
});

describe("laws", () => {
  it("draws each square once, where its cell is, in any order", () => {
    fc.assert(
      fc.property(cells, (some) => {
        const d = shapesPath(some, BOOK_SHAPES.both);
        const drawn = corner(d)
          .map((point) => point?.map((number) => Number(number.toFixed(6))).join(" "))
          .toSorted();
        expect(drawn).toEqual(some.map(({ column, row }) => `${column * 4 + 0.25} ${row * 4 + 0.25}`).toSorted());
        expect(shapesPath([...some, ...some].toReversed(), BOOK_SHAPES.both)).toBe(d);
      }),
    );
  });

  it("covers with runs exactly the cells given, with no two runs that touch", () => {
    fc.assert(
      fc.property(cells, (some) => {
        const runs = readPath(runsPath(some, 1)).map(({ points: [from, to] }) => ({
          row: (from?.[1] ?? 0) - 0.5,
          from: from?.[0] ?? 0,
          to: to?.[0] ?? 0,
        }));
        const covered = runs.flatMap(({ row, from, to }) =>
          Array.from({ length: to - from }, (_, i) => `${from + i} ${row}`),
        );
        expect(covered.toSorted()).toEqual(some.map(({ column, row }) => `${column} ${row}`).toSorted());
        for (const run of runs)
          expect(runs.some((other) => other.row === run.row && other.from === run.to)).toBe(false);
      }),
    );
  });
});
