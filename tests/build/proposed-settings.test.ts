import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { proposedSettings } from "../../src/build/proposed-settings.ts";
import { nothingRead, type UnmappedColumn } from "../../src/records/file-read.ts";
import { SourceSetting } from "../../src/scheme/settings.ts";
import { schemeOf } from "../records/interpreting.ts";

function proposed(source: object, ...tables: UnmappedColumn[][]): string {
  const scheme = schemeOf([{ id: "walks", files: "records/walks.csv", ...source }]);
  const [setting] = scheme.settings.sources;
  if (setting === undefined) throw new Error("a scheme has a source");
  const files = tables.map((unmapped) => ({
    source: setting,
    name: "records/walks.csv",
    parquet: "",
    result: { ...nothingRead("", []), unmapped },
  }));
  return proposedSettings(scheme, files);
}

describe("settings that are proposed", () => {
  it("are a block to paste, by the scheme's own checklist and grids, with the reasons", () => {
    const text = proposed({}, [
      { header: "Art", values: ["Bombus pratorum", "Bombus lucorum"] },
      { header: "Datum", values: ["13.5.2021", "3.5.2021"] },
      { header: "Raster", values: ["TQ3877", "SU12"] },
      { header: "VC", values: ["H12", "H13"] },
      { header: "yes", values: ["x"] },
    ]);
    expect(text).toBe(
      "  - id: walks\n    columns:\n      scientificName: Art  # 2 of 2 values are names of the checklist\n      eventDate: Datum  # 2 of 2 values are dates\n      gridReference: Raster  # 2 of 2 values are grid references\n      viceCounty: VC  # by its header\n    date_format: day-first  # no other reads these dates\n",
    );
  });

  it("keep the columns that are settled, and are settings", () => {
    const text = proposed({ columns: { locality: "Site: name", eventDate: "#2" } }, [
      { header: 'The "name"', values: ["Bombus pratorum"] },
    ]);
    const [block] = (parse(`sources:\n${text}`) as { sources: object[] }).sources;
    expect(SourceSetting.parse({ files: "a.csv", ...block }).columns).toEqual({
      locality: "Site: name",
      eventDate: "#2",
      scientificName: 'The "name"',
    });
  });

  it("name a field once for all files of a source", () => {
    const text = proposed(
      {},
      [{ header: "Art", values: ["Bombus pratorum"] }],
      [{ header: "Name", values: ["Bombus lucorum"] }],
    );
    expect(text).toContain("scientificName: Art");
    expect(text).not.toContain("scientificName: Name");
  });

  it("are none where nothing is left to propose", () => {
    expect(proposed({}, [{ header: "Wetter", values: ["sun"] }])).toBe("");
    expect(
      proposed({ constants: { scientificName: "Bombus" } }, [{ header: "Art", values: ["Bombus pratorum"] }]),
    ).toBe("");
  });
});
