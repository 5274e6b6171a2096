import { describe, expect, it } from "vitest";
import { type OccurrenceFields, readOccurrence, USUAL_EXCLUSIONS } from "../../src/names/occurrence.ts";

/** Status, or "?", with the codes of the problems. */
function read(fields: OccurrenceFields): string {
  const { status, problems } = readOccurrence(fields);
  return [status ?? "?", ...problems.map(({ code }) => code)].join(" ");
}

describe("examples", () => {
  it("hold", () => {
    expect(readOccurrence({ occurrenceStatus: "notDetected" })).toEqual({
      status: "absent",
      excluded: undefined,
      count: undefined,
      problems: [],
    });
  });
});

describe("occurrenceStatus", () => {
  // The values of the Darwin Core term until 2026-05-26 and since; the others are cases 908 to 919 of the draft BDQ
  // tests of TDWG (snapshot 2026-07-29, CC BY 4.0), none of which is a value of the standard.
  it.each([
    ["present", "present"],
    ["absent", "absent"],
    ["detected", "present"],
    ["notDetected", "absent"],
    ["Present ", "present"],
    ["NOT DETECTED", "absent"],
    ["", "present"],
    [" ", "present"],
    ["1", "? status_not_read"],
    ["0", "? status_not_read"],
    ["Sighted", "? status_not_read"],
    ["presence", "? status_not_read"],
    ["?", "? status_not_read"],
    ["null", "? status_not_read"],
    ["anyOldTerm", "? status_not_read"],
  ])("%s is %s", (occurrenceStatus, expected) => {
    expect(read({ occurrenceStatus })).toBe(expected);
  });

  it("against the count is a problem, and the status stands", () => {
    expect(read({ occurrenceStatus: "present", individualCount: "0" })).toBe("present count_zero_but_present");
    expect(read({ occurrenceStatus: "absent", individualCount: "3" })).toBe("absent count_but_absent");
    expect(read({ occurrenceStatus: "absent", individualCount: "0" })).toBe("absent");
    expect(read({ individualCount: "0" })).toBe("? count_zero_without_status");
    expect(read({ individualCount: "several" })).toBe("present count_not_read");
    expect(readOccurrence({ individualCount: "25" })).toMatchObject({ status: "present", count: 25, problems: [] });
  });
});

describe("exclusions", () => {
  it("follow the settings, whatever the spelling", () => {
    expect(readOccurrence({ basisOfRecord: "Fossil Specimen" }).excluded).toBe("basisOfRecord Fossil Specimen");
    expect(readOccurrence({ basisOfRecord: "HumanObservation" }).excluded).toBeUndefined();
    expect(readOccurrence({ degreeOfEstablishment: "captive (category B1)" }).excluded).toBe(
      "degreeOfEstablishment captive",
    );
    expect(readOccurrence({ establishmentMeans: "Released" }).excluded).toBe("establishmentMeans Released");
    expect(
      readOccurrence({ establishmentMeans: "native", degreeOfEstablishment: "established" }).excluded,
    ).toBeUndefined();
    expect(
      readOccurrence({ basisOfRecord: "FossilSpecimen" }, { ...USUAL_EXCLUSIONS, excludedBases: [] }).excluded,
    ).toBeUndefined();
    expect(
      readOccurrence({ establishmentMeans: "vagrant" }, { ...USUAL_EXCLUSIONS, excludedEstablishment: ["vagrant"] })
        .excluded,
    ).toBe("establishmentMeans vagrant");
  });

  it("leave the status as it is: an excluded record is counted, with its reason", () => {
    expect(readOccurrence({ basisOfRecord: "LivingSpecimen", occurrenceStatus: "detected" })).toMatchObject({
      status: "present",
      excluded: "basisOfRecord LivingSpecimen",
    });
  });

  it("say of a basis that is no class of Darwin Core that it was not read", () => {
    // Cases 850 to 857 of the draft BDQ tests.
    expect(["PreservedSpecimen", "HumanObservation", "Taxon"].map((basisOfRecord) => read({ basisOfRecord }))).toEqual([
      "present",
      "present",
      "present",
    ]);
    expect(["Specimen", "anyOldTerm", "?"].map((basisOfRecord) => read({ basisOfRecord }))).toEqual(
      Array(3).fill("present basis_not_read"),
    );
  });

  it("say of a count of ten figures and more that it was not read", () => {
    expect(readOccurrence({ individualCount: "9".repeat(400) })).toMatchObject({
      count: undefined,
      problems: [{ code: "count_not_read" }],
    });
  });
});
