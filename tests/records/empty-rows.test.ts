import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { watchEmptyRows } from "../../src/records/empty-rows.ts";

const hasEmptyRow = (pieces: readonly string[]) => {
  const rows = watchEmptyRows();
  for (const piece of pieces) rows.look(Buffer.from(piece));
  return rows.found();
};

describe("watchEmptyRows", () => {
  it("finds rows of delimiters alone, quoted and spaced too, at the end of the text as well", () => {
    for (const text of ["a;b\n;\n1;2\n", "a,b\r\n,\r\n", 'a,b\n"",""\n', "a\tb\n\t", "a|b\n | \n"])
      expect(hasEmptyRow([text]), text).toBe(true);
    for (const text of ["a;b\n;2\n1;\n", "a,b\n\n1,2\n", "a,b\r\n1,2\r\n\r\n", "", ";;\na;b"])
      expect(hasEmptyRow([text]), text).toBe(false);
  });

  it("finds the same however the text is cut into pieces", () => {
    const text = fc.array(fc.constantFrom("a", ";", "\n", "\r\n", " ", '"'), { maxLength: 30 });
    fc.assert(
      fc.property(text, fc.nat(30), (signs, cut) => {
        expect(hasEmptyRow([signs.slice(0, cut).join(""), signs.slice(cut).join("")])).toBe(
          hasEmptyRow([signs.join("")]),
        );
      }),
    );
  });
});
