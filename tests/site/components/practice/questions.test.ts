import { describe, expect, it } from "vitest";
import { judged, questionsOf } from "../../../../src/site/components/practice/questions.ts";
import { sheetQuestions } from "../../../../src/site/components/practice/sheet-questions.ts";
import { demonstrationTaxa } from "../../../support/demonstration-taxa.ts";

const { all, castes } = demonstrationTaxa();
const questions = questionsOf(all, castes);
const question = (id: string) => {
  const found = questions.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no question ${id} among ${questions.map((each) => each.id).join(", ")}`);
  return found;
};
const taxon = (slug: string) => all.find((each) => each.slug === slug) ?? question("").taxon;

describe("questions of the demonstration", () => {
  // The right answers here are common practice among recorders of bumblebees.
  it("want the aggregate where what is shown settles no more", () => {
    expect(question("bombus-terrestris:queen").answer.slug).toBe("bombus-terrestris");
    expect(question("bombus-terrestris:worker").answer.slug).toBe("bombus-terrestris-lucorum");
    expect(question("bombus-lucorum-agg:worker").answer.slug).toBe("bombus-terrestris-lucorum");
    expect(question("bombus-hortorum:queen").answer.slug).toBe("bombus-hortorum-ruderatus");
    expect(question("bombus-lapidarius:queen").answer.slug).toBe("bombus-lapidarius");
  });
  it("have their answer among at most six names, in the order of the atlas", () => {
    const place = (slug: string) => all.findIndex((each) => each.slug === slug);
    for (const { id, answer, choices } of questions) {
      expect(choices, id).toContain(answer);
      expect(choices.length, id).toBeGreaterThan(1);
      expect(choices.length, id).toBeLessThanOrEqual(6);
      const places = choices.map(({ slug }) => place(slug));
      expect(places, id).toEqual([...places].sort((one, other) => one - other));
    }
  });
  it("show no group of several, and each species once at least", () => {
    expect(questions.filter(({ taxon: shown }) => shown.members.length > 0)).toEqual([]);
    const shown = new Set(questions.map(({ taxon: each }) => each.slug));
    const species = all.filter(({ outside, members }) => !outside && members.length === 0);
    expect(species.filter(({ slug }) => !shown.has(slug)).map(({ slug }) => slug)).toEqual([]);
  });
});

describe("an answer", () => {
  it("is right, true but wide, more than is shown, or wrong", () => {
    const [queen, worker] = [question("bombus-terrestris:queen"), question("bombus-terrestris:worker")];
    const group = taxon("bombus-terrestris-lucorum");
    expect(judged(queen, queen.taxon, all)).toBe("right");
    expect(judged(queen, group, all)).toBe("near");
    expect(judged(worker, group, all)).toBe("right");
    expect(judged(worker, worker.taxon, all)).toBe("more");
    expect(judged(worker, taxon("bombus-lucorum-agg"), all)).toBe("more");
    expect(judged(worker, taxon("bombus-hortorum"), all)).toBe("wrong");
  });
});

describe("the printed sheet", () => {
  it("holds twelve different animals, of every group by first sight, the same for one edition", () => {
    const sheet = sheetQuestions(questions, "2025.1");
    expect(new Set(sheet.map(({ id }) => id)).size).toBe(12);
    expect(new Set(sheet.map(({ taxon: each }) => each.slug)).size).toBe(12);
    const groups = (list: typeof questions) =>
      new Set(list.map(({ taxon: each }) => (each.outside ? "-" : each.firstSeen)));
    expect(groups(sheet)).toEqual(groups(questions));
    expect(sheetQuestions(questions, "2025.1").map(({ id }) => id)).toEqual(sheet.map(({ id }) => id));
    expect(sheetQuestions(questions, "2026.1").map(({ id }) => id)).not.toEqual(sheet.map(({ id }) => id));
  });
});
