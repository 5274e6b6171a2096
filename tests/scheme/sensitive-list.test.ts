import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { Mistake } from "../../src/mistake.ts";
import { generalisationsOf, levelOf, scopeInWords } from "../../src/scheme/generalisations.ts";
import { readScheme } from "../../src/scheme/scheme.ts";
import { overdueReviews } from "../../src/scheme/sensitive-list.ts";
import { LIST, writeHiddenScheme } from "../support/hidden-species.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const HEADER = "taxonID,level,territories,castes,months,reason,responsible,reviewDate";

function read(...rows: string[]) {
  const folder = join(makeTemporaryFolder(), "scheme");
  writeHiddenScheme(folder, null, "");
  writeFileSync(join(folder, "sensitive.csv"), `${[HEADER, ...rows].join("\n")}\n`);
  return readScheme(folder);
}

describe("sensitive.csv", () => {
  it("may be missing", () => {
    const folder = join(makeTemporaryFolder(), "scheme");
    writeHiddenScheme(folder, null, "");
    expect(readScheme(folder).sensitive).toEqual([]);
  });

  it("gives level, scope, reason and review of each entry", () => {
    const { sensitive, settings } = read("secret,10 km,ireland,nest | not_stated,5 | 6,Why.,officer,2030-01-01");
    expect(sensitive).toEqual([
      {
        taxonID: "secret",
        level: "10 km",
        territories: ["ireland"],
        castes: ["nest", "not_stated"],
        months: [5, 6],
        reason: "Why.",
        responsible: "officer",
        reviewDate: "2030-01-01",
        row: 2,
      },
    ]);
    expect(scopeInWords(sensitive[0] ?? { territories: [], castes: [], months: [] }, settings)).toBe(
      "Ireland; nest, not stated; May, June",
    );
  });

  it.each([
    ["nobody,10 km,,,,Why.,officer,2030-01-01", "taxonID", "is not in checklist.csv"],
    ["secret,5 km,,,,Why.,officer,2030-01-01", "level", "2 km, 10 km, withheld"],
    ["secret,10 km,wales,,,Why.,officer,2030-01-01", "territories", "is no territory"],
    ["secret,10 km,,egg,,Why.,officer,2030-01-01", "castes", "is no caste"],
    ["secret,10 km,,,May,Why.,officer,2030-01-01", "months", "write months as numbers"],
    ["secret,10 km,,,13,Why.,officer,2030-01-01", "months", "write months as numbers"],
    ["secret,10 km,,,,,officer,2030-01-01", "reason", "say why"],
    ["secret,10 km,,,,Why.,,2030-01-01", "responsible", "name a role"],
    ["secret,10 km,,,,Why.,officer,soon", "reviewDate", "2027-03-31"],
  ])("refuses %s, with row and field", (row, field, words) => {
    let mistake: unknown;
    try {
      read("fine,2 km,,,,Why.,officer,2030-01-01", row);
    } catch (error) {
      mistake = error;
    }
    expect(mistake).toBeInstanceOf(Mistake);
    expect((mistake as Mistake).where).toMatchObject({ file: "sensitive.csv", row: 3, field });
    expect((mistake as Mistake).message).toContain(words);
  });

  it("refuses two entries for the same records, which could only disagree", () => {
    expect(() => read("secret,10 km,,,,A.,officer,2030-01-01", "secret,withheld,,,,B.,officer,2030-01-01")).toThrow(
      "row 2",
    );
  });

  it("is due for review against the date of the edition", () => {
    const { sensitive } = read("secret,10 km,,,,A.,officer,2021-12-30", "deep,10 km,,,,A.,officer,2021-12-31");
    expect(overdueReviews(sensitive, "2021-12-31").map(({ taxonID }) => taxonID)).toEqual(["secret"]);
  });
});

describe("generalisationsOf", () => {
  it("bears on the taxon, on its members, and in part on the groups above it", () => {
    const scheme = read(...LIST.trim().split("\n").slice(1));
    const told = (taxon: string) =>
      generalisationsOf(scheme, taxon).map(({ entry, own, whole }) => [entry.taxonID, own, whole]);
    expect(told("secret")).toEqual([["secret", true, true]]);
    expect(told("pair")).toEqual([["secret", false, false]]);
    expect(told("nesting")).toEqual([["nesting", true, false]]);
    expect(told("common")).toEqual([]);
    expect(levelOf(generalisationsOf(scheme, "deep"))).toBe("withheld");
    expect(levelOf(generalisationsOf(scheme, "nesting"))).toBeNull();
    const group = read("pair,10 km,,,,A.,officer,2030-01-01");
    expect(levelOf(generalisationsOf(group, "common"))).toBe("10 km");
  });
});
