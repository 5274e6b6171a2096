import { describe, expect, it } from "vitest";
import { refuseUnknownChecks } from "../../src/review/known-checks.ts";

const refuse = (name: string) => refuseUnknownChecks({ checks: { severity: { [name]: "note" } } });

describe("refuseUnknownChecks", () => {
  it("takes checks of the whole, of one value, and of files", () => {
    for (const name of ["far_in_a_day", "name_unknown", "occurrence_count_but_absent", "cell_cut"])
      expect(() => refuse(name), name).not.toThrow();
  });

  it("tells a slip, with the name that may be meant", () => {
    expect(() => refuse("far_in_a_dya")).toThrow(
      "checks.severity “far_in_a_dya” is the name of no check; did you mean far_in_a_day?",
    );
    expect(() => refuse("toString")).toThrow("write a name of column check in review/findings.csv");
  });
});
