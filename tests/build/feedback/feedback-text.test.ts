import { describe, expect, it } from "vitest";
import { type Feedback, feedbackText } from "../../../src/build/feedback/feedback-text.ts";
import { schemeOf } from "../../records/interpreting.ts";

const scheme = schemeOf([{ id: "walks", files: "walks.csv" }]);
const recorder = "a reed";
const sheet = (more: Partial<Feedback>) =>
  feedbackText(scheme, { name: "A. Reed", year: 2019, fates: [], firsts: [], reidentified: [], squares: [], ...more });

describe("feedbackText", () => {
  it("adds up to what was received, with the reasons", () => {
    const text = sheet({
      fates: [
        { recorder, status: "used", reason: "used", records: 150 },
        { recorder, status: "used", reason: "not_detected", records: 6 },
        { recorder, status: "held", reason: "impossible_caste", records: 1 },
        { recorder, status: "not used", reason: "two_routes", records: 3 },
      ],
    });
    expect(text).toContain("Received: 160");
    expect(text).toMatch(/156 {2}used\n +6 {4}looked for and not found/);
    expect(text).toMatch(
      / 1 {2}held\n +1 {4}a caste this taxon does not have\n +3 {2}not used\n +3 {4}the same record/,
    );
  });

  it("says which records were named otherwise, and by which part", () => {
    const text = sheet({
      reidentified: [
        {
          recorder,
          record_key: "walks:1",
          said_name: "Bombus vestalis",
          said_date: "2019-05-01",
          said_place: "SP50",
          name: "Bombus bohemicus",
          part: "antenna",
          why: "segments equal",
        },
      ],
    });
    expect(text.replaceAll(/\s+/g, " ")).toContain(
      "Bombus vestalis, 2019-05-01, SP50 (walks:1) is now Bombus bohemicus: seen on the antenna; segments equal.",
    );
  });

  it("lists firsts by species, and squares that want one more visit with the caution", () => {
    const text = sheet({
      firsts: [
        { recorder, first_of: "territory", taxon_id: "invented-hypnorum", place: "ireland" },
        { recorder, first_of: "square", taxon_id: "", place: "S00" },
        { recorder, first_of: "taxon", taxon_id: "invented-hypnorum", place: "S00" },
        { recorder, first_of: "taxon", taxon_id: "invented-hypnorum", place: "S01" },
      ],
      squares: ["S61"],
    }).replaceAll(/\s+/g, " ");
    expect(text).toContain("The first record of Bombus hypnorum in Ireland.");
    expect(text).toContain("10 km squares nobody had recorded in: S00.");
    expect(text).toContain("Bombus hypnorum: S00, S01.");
    expect(text).toMatch(/covered \(5 visits\): S61\. .*ask leave, mind water/);
  });

  it("says of a withheld taxon no firsts, for what is none tells where others saw it", () => {
    const entry = { taxonID: "invented-hypnorum", level: "withheld", territories: [], castes: [], months: [] };
    const hushed = { ...scheme, sensitive: [entry as unknown as (typeof scheme.sensitive)[number]] };
    const firsts = [
      { recorder, first_of: "taxon", taxon_id: "invented-hypnorum", place: "S00" },
      { recorder, first_of: "taxon", taxon_id: "invented-vestalis", place: "S01" },
    ] as const;
    const text = feedbackText(hushed, { name: "A", year: 2019, fates: [], firsts, reidentified: [], squares: [] });
    expect(text).toContain("Bombus vestalis: S01.");
    expect(text).not.toContain("S00");
  });

  it("says nothing of what there is none of, and that invented records are", () => {
    const text = sheet({});
    expect(text).not.toMatch(/Named otherwise|What you added|One more visit/);
    expect(text).toContain("invented");
  });
});
