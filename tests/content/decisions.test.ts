import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import Papa from "papaparse";
import { beforeAll, describe, expect, it } from "vitest";
import { generateDemonstration } from "../../scripts/demonstration/generate.ts";
import { readDecisions } from "../../src/scheme/decisions-file.ts";
import { decisionsInForce } from "../../src/scheme/decisions-in-force.ts";

const CONTENT = fileURLToPath(new URL("../../content", import.meta.url));
const decisions = readDecisions(CONTENT);

describe("the rulings of the demonstration", () => {
  beforeAll(() => {
    generateDemonstration();
  });

  it("are on records that the generator still makes, and that still say what they said", () => {
    const files = new Map<string, Map<string, Record<string, string>>>();
    const rowsOf = (source: string) => {
      const { data } = Papa.parse<Record<string, string>>(
        readFileSync(join(CONTENT, "records", `${source}.csv`), "utf8"),
        { header: true },
      );
      return new Map(data.map((row) => [row["occurrenceID"] ?? "", row]));
    };
    for (const { recordKey, saidName, saidDate } of decisions.filter(({ ruling }) => ruling !== "withdraw")) {
      const [source = "", id = ""] = recordKey.split(":");
      const rows = files.get(source) ?? rowsOf(source);
      files.set(source, rows);
      expect([recordKey, rows.get(id)?.["scientificName"], rows.get(id)?.["eventDate"]]).toEqual([
        recordKey,
        saidName,
        saidDate,
      ]);
    }
  });

  it("show a correction, a re-identification, an opinion, a batch, and a ruling taken back; nobody is named", () => {
    const rulings = new Set(decisions.map(({ ruling }) => ruling));
    expect([...rulings].sort()).toEqual(["correct", "hold", "identify", "opinion", "re-identify", "use", "withdraw"]);
    expect(decisions.filter(({ batch }) => batch !== "").length).toBe(2);
    const inForce = decisionsInForce(decisions);
    expect(inForce.has("walks:invented-walk-053326")).toBe(false);
    expect([...new Set(decisions.map(({ who }) => who))]).toEqual(["officer", "second reviewer"]);
  });
});
