import { describe, expect, it } from "vitest";
import { carried, type Question } from "../../../src/build/pack/carried.ts";
import type { Scheme } from "../../../src/scheme/scheme.ts";
import { suppressedNames } from "../../../src/scheme/suppressed-names.ts";
import { schemeOf } from "../../records/interpreting.ts";

const QUESTION: Question = {
  look_no: 1,
  record_key: "walks:a1",
  said_mark: "m1",
  check_name: "unexpected_place_season",
  message: "nearest square with it then 212 km away",
  way_out: "see whether day and month are right, then the name",
  proposal: "gridReference=SP5006",
  said_name: "Bombus vestalis",
  said_date: "2011-07-12",
  said_place: "SP501063",
  said_kind: "worker",
  locality: "by the mill",
  remarks: "with Zoë Quill, at A. Reed’s",
  recorded_by: "A. Reed",
  taxon_id: "invented-vestalis",
  hectad: "SP50",
};
const plain = { ...schemeOf([{ id: "walks", files: "walks.csv" }]), suppressed: suppressedNames(["Zoe Quill"]) };
const listed = (level: string, taxonID = "invented-vestalis"): Scheme => ({
  ...plain,
  sensitive: [{ taxonID, level, territories: [], castes: [], months: [] } as unknown as Scheme["sensitive"][number]],
});

describe("what a pack carries", () => {
  it("is the question as it stands, without names of recorders and texts that hold one", () => {
    expect(carried(plain, QUESTION, false)).toEqual({ ...QUESTION, recorded_by: "", remarks: "" });
    const byMill = { ...QUESTION, remarks: "on clover" };
    expect(carried(plain, byMill, true)).toEqual(byMill);
  });

  it("names nobody on the suppressed list, wherever the name stands and whoever is to be named", () => {
    const quill = { ...QUESTION, recorded_by: "QUILL Zoë", locality: "garden of Zoe Quill", message: "by zoe QUILL" };
    expect(JSON.stringify(carried(plain, quill, true))).not.toMatch(/quill/i);
  });

  it("tells of a taxon on the sensitive list no finer place than 10 km, and nothing that others' records tell", () => {
    const told = carried(listed("10 km"), QUESTION, true);
    expect(told).toMatchObject({ said_place: "SP50", locality: "", remarks: "", proposal: "" });
    expect(told.message).toBe("unexpected here and now");
    // "day and month alone" would say that the place was found to be one where others saw it.
    expect(told.way_out).toBe("see whether name, place and date are right");
    expect(carried(listed("withheld"), QUESTION, true).said_place).toBe("");
    expect(carried(listed("10 km", "invented-distinguendus"), QUESTION, true).said_place).toBe("SP501063");
  });

  it("quotes no other record's file and nobody's opinion", () => {
    const file = {
      ...QUESTION,
      check_name: "same_id_other_record",
      message: "row 3 of records/of-ann.csv has this id too",
    };
    expect(carried(plain, file, false).message).toBe("one id on records that differ");
    const opinion = { ...QUESTION, check_name: "opinion_waits", message: "others say: hold (ann, 2025-01-01)" };
    expect(carried(plain, opinion, false).message).toBe("opinions of others wait for a ruling");
  });
});
