import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { codes, editsAllowed, prefixEdits } from "../../../../src/site/components/find/prefix-edits.ts";

/** Optimal string alignment as textbooks give it: the whole table, and the least of its last row. */
function plainly(query: string, name: string): number {
  const table = [...query, ""].map((_, row) =>
    [...name, ""].map((__, column) => (row === 0 ? column : column === 0 ? row : 0)),
  );
  const at = (row: number, column: number) => table[row]?.[column] ?? Number.NaN;
  for (let row = 1; row <= query.length; row += 1)
    for (let column = 1; column <= name.length; column += 1) {
      const same = query[row - 1] === name[column - 1];
      const choices = [at(row - 1, column) + 1, at(row, column - 1) + 1, at(row - 1, column - 1) + (same ? 0 : 1)];
      if (row > 1 && column > 1 && query[row - 1] === name[column - 2] && query[row - 2] === name[column - 1])
        choices.push(at(row - 2, column - 2) + 1);
      const line = table[row];
      if (line !== undefined) line[column] = Math.min(...choices);
    }
  return Math.min(...(table[query.length] ?? []));
}

/** Few letters, so that chance gives names that are nearly alike. */
const text = (longest: number) => fc.string({ unit: fc.constantFrom("a", "b", "c", " "), maxLength: longest });
const edits = (query: string, name: string, limit: number, start = 0) =>
  prefixEdits(codes(query), codes(name), start, limit);

describe("prefixEdits", () => {
  it("is the least of the textbook's table, as far as the limit", () => {
    fc.assert(
      fc.property(text(12), text(16), fc.integer({ min: 0, max: 2 }), (query, name, limit) => {
        expect(edits(query, name, limit)).toBe(Math.min(plainly(query, name), limit + 1));
      }),
      { numRuns: 20_000 },
    );
  });

  it("compares from any word's beginning as if the name began there", () => {
    fc.assert(
      fc.property(text(8), text(12), text(12), (query, before, name) => {
        expect(edits(query, before + name, 2, before.length)).toBe(edits(query, name, 2));
      }),
    );
  });

  it("counts a letter put in, left out, changed and two swapped as one each", () => {
    // Damerau (1964): the four errors of a single keystroke.
    expect(["gardden", "grden", "gerden", "gadren"].map((query) => edits(query, "garden bumblebee", 2))).toEqual([
      1, 1, 1, 1,
    ]);
    expect(edits("garden", "garden bumblebee", 2)).toBe(0);
    expect(edits("grdn", "garden", 1)).toBe(2);
  });
});

describe("editsAllowed", () => {
  it("allows none in three letters, one in seven, two above", () => {
    expect([1, 3, 4, 7, 8, 40].map(editsAllowed)).toEqual([0, 0, 1, 1, 2, 2]);
  });
});
