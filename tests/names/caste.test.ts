import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CasteFields, NOT_STATED, readCaste } from "../../src/names/caste.ts";
import { joinCounts, widerThan } from "../../src/names/caste-classes.ts";
import { readCasteText } from "../../src/names/caste-text.ts";
import { CASTES } from "./bumblebees.ts";

/** "1 queen, 3 worker, male" and the codes of the problems. */
function read(fields: CasteFields, allowed?: readonly string[]): string {
  const { counts, problems } = readCaste(fields, CASTES, allowed);
  const told = counts.map(({ caste, count }) => (count === undefined ? caste : `${count} ${caste}`)).join(", ");
  return [told, ...problems.map(({ code }) => code)].join("; ");
}

describe("examples", () => {
  it("hold", () => {
    expect(readCaste({ caste: "1q 3w, m" }, CASTES)).toEqual({
      counts: [
        { caste: "queen", count: 1 },
        { caste: "worker", count: 3 },
        { caste: "male", count: undefined },
      ],
      problems: [],
    });
    expect(readCasteText("2 queens; 4 workers", CASTES).counts).toEqual([
      { caste: "queen", count: 2 },
      { caste: "worker", count: 4 },
    ]);
    expect(joinCounts([{ caste: "worker", count: undefined }], [{ caste: "female", count: 2 }], CASTES)).toEqual([
      { caste: "worker", count: 2 },
    ]);
    expect(widerThan("worker", CASTES)).toEqual(["female"]);
  });
});

// Common practice in records, without a published source, but for the mixed strings: those were examples of the
// Darwin Core terms sex and lifeStage until 2017.
describe("caste", () => {
  it.each([
    ["Worker", "worker"],
    ["workers", "worker"],
    ["Q", "queen"],
    ["gyne", "queen"],
    ["♀", "female"],
    ["♀♀", "female"],
    ["3♂♂", "3 male"],
    ["1q 3w, m", "1 queen, 3 worker, male"],
    ["1q/3w", "1 queen, 3 worker"],
    ["q w m", "queen, worker, male"],
    ["2 queens; 4 workers", "2 queen, 4 worker"],
    ["8 males, 4 females", "8 male, 4 female"],
    ["q1 w3", "1 queen, 3 worker"],
    ["workers (3)", "3 worker"],
    ["queen and two workers", "queen, 2 worker"],
    ["several workers", "worker"],
    ["1 q, 2 q", "3 queen"],
    ["0w 1q", "1 queen"],
    ["female queen", "queen"],
    ["queen, male", "queen, male"],
    ["", "not_stated"],
    ["not stated", "not_stated"],
    ["?", "not_stated"],
    ["adult", "not_stated"],
    ["queen/worker", "not_stated; either"],
    ["male worker", "not_stated; contradiction"],
    ["2 adults 4 juveniles", "not_stated; unread_words"],
  ])("%s is %s", (caste, expected) => {
    expect(read({ caste })).toBe(expected);
  });

  it("joins the terms, the finer class counting", () => {
    expect(read({ caste: "worker", sex: "female" })).toBe("worker");
    expect(read({ caste: "queen", sex: "1 female", lifeStage: "adult" })).toBe("1 queen");
    expect(read({ sex: "male", lifeStage: "adult" })).toBe("male");
    expect(read({ caste: "1q 3w", sex: "female" })).toBe("1 queen, 3 worker");
  });

  it("never makes a worker of a female", () => {
    expect(read({ sex: "female" }, ["queen", "worker", "male"])).toBe("female");
  });

  it("reports two classes of the same individuals", () => {
    expect(read({ caste: "worker", sex: "male" })).toBe("not_stated; contradiction");
    expect(read({ caste: "queen, worker", sex: "male" })).toBe("not_stated; contradiction");
    expect(read({ caste: "male worker", sex: "male" })).toBe("not_stated; contradiction");
  });

  it("reports the worker of a cuckoo, and keeps what was written", () => {
    expect(read({ caste: "worker" }, ["female", "male"])).toBe("worker; caste_not_of_taxon");
    expect(read({ caste: "1f 2m" }, ["female", "male"])).toBe("1 female, 2 male");
    expect(read({}, ["female", "male"])).toBe("not_stated");
    expect(read({ caste: "worker" }, [])).toBe("worker");
  });

  it("reads back any list of counts as it was written", () => {
    const count = fc.record({
      caste: fc.constantFrom("queen", "worker", "male", "female"),
      count: fc.option(fc.integer({ min: 1, max: 500 }), { nil: undefined }),
    });
    const counts = fc.uniqueArray(count, { selector: ({ caste }) => caste, minLength: 1 });
    fc.assert(
      fc.property(counts, fc.constantFrom(", ", "; ", " and "), (written, separator) => {
        const text = written
          .map(({ caste, count: number }) => (number === undefined ? caste : `${number} ${caste}`))
          .join(separator);
        expect(readCaste({ caste: text }, CASTES)).toEqual({ counts: written, problems: [] });
      }),
    );
  });

  it("takes no range, fraction, negative or endless number for a count", () => {
    for (const text of ["2-4 w", "2.5 w", "1,5 w", "-3 w", `${"9".repeat(40)} w`]) {
      const { counts, problems } = readCaste({ caste: text }, CASTES);
      expect(counts).toEqual([{ caste: "worker", count: undefined }]);
      expect(problems).toMatchObject([{ code: "unread_words" }]);
    }
  });

  it("always gives at least one count, of a class of the vocabulary or not stated", () => {
    const ids = [NOT_STATED, ...CASTES.classes.map(({ id }) => id)];
    const words = fc.constantFrom("1", "0", "q", "worker", "♂", "/", ",", " ", "xyz", "male", "(", "one");
    fc.assert(
      fc.property(fc.array(words, { maxLength: 8 }), (parts) => {
        const { counts } = readCaste({ caste: parts.join(" ") }, CASTES);
        expect(counts.length).toBeGreaterThan(0);
        for (const { caste } of counts) expect(ids).toContain(caste);
      }),
    );
  });
});
