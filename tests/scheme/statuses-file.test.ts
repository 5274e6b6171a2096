import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import type { ChecklistRow } from "../../src/scheme/content-tables.ts";
import { readStatuses } from "../../src/scheme/statuses-file.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const TAXA = [{ taxonID: "invented-lapidarius" }] as unknown as readonly ChecklistRow[];
const HEADER = "taxonID,list,category,year,jurisdiction,citation,url";

function statuses(row: string) {
  const folder = makeTemporaryFolder();
  writeFileSync(join(folder, "statuses.csv"), `${HEADER}\n${row}\n`);
  return readStatuses(folder, TAXA);
}

it("reads the lists a taxon is in, and none where there is no file", () => {
  expect(readStatuses(makeTemporaryFolder(), TAXA)).toEqual([]);
  expect(statuses("invented-lapidarius,A list,Of concern,2012,An area,A book,https://list.example/a")).toMatchObject([
    { list: "A list", category: "Of concern", year: 2012, jurisdiction: "An area", url: "https://list.example/a" },
  ]);
});

it("refuses a taxon nobody knows, a year that is none, and a list that cannot be looked up", () => {
  expect(() => statuses("invented-other,A list,Of concern,2012,An area,A book,")).toThrow("is not in checklist.csv");
  expect(() => statuses("invented-lapidarius,A list,Of concern,of late,An area,A book,")).toThrow("write the year");
  expect(() => statuses("invented-lapidarius,A list,Of concern,2012,An area,,")).toThrow("say where the list");
  expect(() => statuses("invented-lapidarius,A list,Of concern,2012,An area,A book,list.example")).toThrow("https://");
});
