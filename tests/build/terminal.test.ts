import { describe, expect, it } from "vitest";
import { describeTerminal } from "../../src/build/terminal.ts";

const TERMINAL = { isTTY: true, columns: 100 };

describe("describeTerminal", () => {
  it("gives the example of its docstring", () => {
    expect(describeTerminal(TERMINAL, { NO_COLOR: "1" })).toEqual({ isTerminal: true, colour: false, columns: 100 });
  });

  it("moves and colours on a terminal only", () => {
    expect(describeTerminal(TERMINAL, {})).toMatchObject({ isTerminal: true, colour: true });
    expect(describeTerminal({}, {})).toEqual({ isTerminal: false, colour: false, columns: 80 });
  });

  it("does neither on TERM=dumb", () => {
    expect(describeTerminal(TERMINAL, { TERM: "dumb" })).toMatchObject({ isTerminal: false, colour: false });
  });

  // https://no-color.org: "when present and not an empty string".
  it("takes an empty NO_COLOR as not set", () => {
    expect(describeTerminal(TERMINAL, { NO_COLOR: "" }).colour).toBe(true);
  });

  it("lets FORCE_COLOR colour a pipe, 0 refuse it, and NO_COLOR win over both", () => {
    expect(describeTerminal({}, { FORCE_COLOR: "1" })).toMatchObject({ isTerminal: false, colour: true });
    expect(describeTerminal(TERMINAL, { FORCE_COLOR: "0" }).colour).toBe(false);
    expect(describeTerminal({}, { FORCE_COLOR: "1", NO_COLOR: "1" }).colour).toBe(false);
  });
});
