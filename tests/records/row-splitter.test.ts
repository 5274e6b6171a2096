import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rowSplitter } from "../../src/records/row-splitter.ts";

function split(pieces: readonly string[], delimiter = ",") {
  const splitter = rowSplitter(delimiter);
  return [...pieces.flatMap((piece) => splitter.push(piece)), ...splitter.end()];
}
const cellsOf = (text: string, delimiter = ",") => split([text], delimiter).map(({ cells }) => cells);

describe("rows", () => {
  it("are as in the docstring", () => {
    expect(split(['a,b\n1,"2\n3"\n'])).toEqual([
      { row: 1, cells: ["a", "b"], broken: false },
      { row: 2, cells: ["1", "2\n3"], broken: false },
    ]);
  });

  // The examples of RFC 4180, section 2.
  it.each([
    [
      "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      "aaa,bbb,ccc\r\nzzz,yyy,xxx",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "b\r\nbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    ['"aaa","b""bb","ccc"', [["aaa", 'b"bb', "ccc"]]],
  ])("of %j are as RFC 4180 has them", (text, rows) => {
    expect(cellsOf(text)).toEqual(rows);
  });

  it("are the same however the text is cut into pieces", () => {
    const text = fc
      .array(fc.constantFrom("a", ",", '"', "\n", "\r\n", "\r", " ", '"x,y"', '"p\nq"'), { maxLength: 30 })
      .map((parts) => `h,i,j\n${parts.join("")}`);
    fc.assert(
      fc.property(text, fc.array(fc.nat(40), { maxLength: 6 }), (whole, cuts) => {
        const at = [0, ...cuts.map((cut) => Math.min(cut, whole.length)).sort((a, b) => a - b), whole.length];
        const pieces = at.slice(1).map((to, index) => whole.slice(at[index], to));
        expect(split(pieces)).toEqual(split([whole]));
      }),
      { numRuns: 500 },
    );
  });

  it("count blank ones and leave them out", () => {
    expect(split(["\n\na,b\n\n1,2\r\r3,4"]).map(({ row }) => row)).toEqual([3, 5, 7]);
  });

  it("with a stray quotation mark are taken line by line, the mark as text", () => {
    expect(split(['a,b\n1,"2\n3,4\n5,6\n'])).toMatchObject([
      { row: 1 },
      { row: 2, cells: ["1", "2"], broken: true },
      { row: 3, cells: ["3", "4"], broken: false },
      { row: 4 },
    ]);
    expect(split(['a,b\n1,"2" inch\n3,4\n'])[1]).toEqual({ row: 2, cells: ["1", '2" inch'], broken: true });
    expect(cellsOf('a,b\n1,5" nail\n')[1]).toEqual(["1", '5" nail']);
  });

  it("of which one opens and another closes by mistake are still rows", () => {
    expect(
      split(['a,b,c\n"un,2,3\n4,5,6\n7,8,9"\n']).map(({ row, cells, broken }) => [row, cells.length, broken]),
    ).toEqual([
      [1, 3, false],
      [2, 3, true],
      [3, 3, false],
      [4, 3, false],
    ]);
  });

  it("without an end are cut, and the rest is read", () => {
    const splitter = rowSplitter(",");
    const rows = [
      ...splitter.push("a,b\n"),
      ...Array.from({ length: 18 }, () => splitter.push("x".repeat(1 << 20))).flat(),
      ...splitter.push("\n1,2\n"),
      ...splitter.end(),
    ];
    expect(rows.map(({ row, cut, cells }) => [row, cut === true, cells.length])).toEqual([
      [1, false, 2],
      [2, true, 1],
      [3, false, 2],
    ]);
  });
});
