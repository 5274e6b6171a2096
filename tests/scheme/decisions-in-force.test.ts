import { describe, expect, it } from "vitest";
import { type DecisionRow, DecisionRow as Row } from "../../src/scheme/decisions-file.ts";
import { decisionsInForce } from "../../src/scheme/decisions-in-force.ts";

const row = (decision: Partial<DecisionRow>): DecisionRow =>
  Row.parse({ decisionID: "d1", recordKey: "walks:1", ruling: "use", ...decision });

describe("decisionsInForce", () => {
  it("lets the latest ruling on a record's status count, and keeps what was said of its identification apart", () => {
    const found = decisionsInForce([
      row({ decisionID: "d1", ruling: "hold" }),
      row({ decisionID: "d2", ruling: "identify", identification: "confirmed on photograph" }),
      row({ decisionID: "d3", ruling: "use" }),
    ]).get("walks:1");
    expect(found?.status?.decisionID).toBe("d3");
    expect(found?.identification?.decisionID).toBe("d2");
  });

  it("gathers corrections, a re-identification among them", () => {
    const found = decisionsInForce([
      row({ ruling: "correct", value: "gridReference=SP50; eventDate=2011-07-12" }),
      row({ decisionID: "d2", ruling: "re-identify", value: "Bombus humilis", partSeen: "T2" }),
    ]).get("walks:1");
    expect(found?.corrections).toEqual({
      gridReference: "SP50",
      eventDate: "2011-07-12",
      scientificName: "Bombus humilis",
    });
  });

  it("lets a corrected place take the place of an earlier one, however it is written", () => {
    const found = decisionsInForce([
      row({ ruling: "correct", value: "gridReference=SP50; caste=queen" }),
      row({ decisionID: "d2", ruling: "correct", value: "decimalLatitude=51.75; decimalLongitude=-1.25" }),
    ]).get("walks:1");
    expect(found?.corrections).toEqual({ caste: "queen", decimalLatitude: "51.75", decimalLongitude: "-1.25" });
    expect(() => decisionsInForce([row({ ruling: "correct", value: "decimalLatitude=51.75" })])).toThrow(
      "a coordinate is corrected without the other",
    );
  });

  it("takes back one ruling, or a whole batch, and lets the one before count again", () => {
    const decisions = [
      row({ decisionID: "d1", ruling: "hold" }),
      row({ decisionID: "d2", ruling: "use", batch: "b1" }),
      row({ decisionID: "d3", recordKey: "walks:2", ruling: "leave out", batch: "b1" }),
      row({ decisionID: "d4", recordKey: "", ruling: "withdraw", value: "b1" }),
    ];
    const found = decisionsInForce(decisions);
    expect(found.get("walks:1")?.status?.decisionID).toBe("d1");
    expect(found.has("walks:2")).toBe(false);
  });

  it("keeps opinions of others beside the ruling, until somebody rules after them", () => {
    const decisions = [
      row({ decisionID: "d1", ruling: "re-identify", value: "Bombus humilis" }),
      row({ decisionID: "d2", ruling: "opinion", value: "Bombus muscorum", who: "B" }),
    ];
    const waiting = decisionsInForce(decisions).get("walks:1");
    expect(waiting?.opinions.map(({ value }) => value)).toEqual(["Bombus muscorum"]);
    expect(waiting?.corrections).toEqual({ scientificName: "Bombus humilis" });
    const ruled = decisionsInForce([...decisions, row({ decisionID: "d3", ruling: "use" })]).get("walks:1");
    expect(ruled?.opinions).toEqual([]);
  });

  it("says where a correction cannot be read, and where nothing is there to take back", () => {
    expect(() => decisionsInForce([{ ...row({ ruling: "correct", value: "colour=red" }), row: 7 }])).toThrow(
      "decisions.csv: row 7, field value: “colour=red” is no correction",
    );
    expect(() => decisionsInForce([row({ ruling: "withdraw", value: "b9" })])).toThrow("no decision and no batch");
  });
});
