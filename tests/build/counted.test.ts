import { describe, expect, it } from "vitest";
import { counted } from "../../src/build/counted.ts";

describe("counted", () => {
  it("gives the examples of its docstring", () => {
    expect(counted(120412, "record")).toBe("120,412 records");
    expect(counted(1, "species", "species")).toBe("1 species");
  });

  it("uses the plural for none and for many, the singular for one only", () => {
    expect([0, 1, 2].map((count) => counted(count, "square"))).toEqual(["0 squares", "1 square", "2 squares"]);
    expect(counted(2, "county", "counties")).toBe("2 counties");
  });
});
