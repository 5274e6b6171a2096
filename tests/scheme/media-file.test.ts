import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { readMedia } from "../../src/scheme/media-file.ts";
import type { Settings } from "../../src/scheme/settings.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const settings = { castes: [{ id: "queen", label: "Queen", words: ["queen"] }] } as unknown as Settings;
const taxa = [{ taxonID: "a" }] as unknown as Parameters<typeof readMedia>[2];
const HEADER = "file,taxonID,castes,form,kind,parts,credit,licence,alt,caption,date\n";

function read(rows: string) {
  const folder = makeTemporaryFolder();
  mkdirSync(join(folder, "media"));
  writeFileSync(join(folder, "media/leg.svg"), "<svg/>");
  writeFileSync(join(folder, "secret.svg"), "<svg/>");
  symlinkSync("/etc/hostname", join(folder, "media/away.svg"));
  writeFileSync(join(folder, "media.csv"), HEADER + rows);
  const { media, mediaFindings } = readMedia(folder, settings, taxa, []);
  return {
    files: media.map(({ file }) => file),
    findings: mediaFindings.map(({ check, row, field }) => [check, row, field]),
  };
}

it("takes a picture with all it needs", () => {
  expect(read("leg.svg,a,queen,,drawing,hind-leg | T1,Us,CC-BY-4.0,A leg,,\n")).toEqual({
    files: ["leg.svg"],
    findings: [],
  });
});

it("leaves out what lacks credit, licence, alternative text, file, taxon, caste or kind, and says so", () => {
  const { files, findings } = read(
    [
      "leg.svg,a,,,drawing,,,CC-BY-4.0,A leg,,",
      "leg.svg,a,,,drawing,,Us,,A leg,,",
      "leg.svg,a,,,drawing,,Us,ask me,A leg,,",
      "leg.svg,a,,,drawing,,Us,CC-BY-4.0,,,",
      "arm.svg,a,,,drawing,,Us,CC-BY-4.0,An arm,,",
      "away.svg,a,,,drawing,,Us,CC-BY-4.0,Not ours,,",
      "../secret.svg,a,,,drawing,,Us,CC-BY-4.0,Not a picture,,",
      ".,a,,,drawing,,Us,CC-BY-4.0,A folder,,",
      "leg.svg,b,,,drawing,,Us,CC-BY-4.0,A leg,,",
      "leg.svg,a,drone,,drawing,,Us,CC-BY-4.0,A leg,,",
      "leg.svg,a,,,painting,,Us,CC-BY-4.0,A leg,,",
    ].join("\n"),
  );
  expect(files).toEqual([]);
  expect(findings).toEqual([
    ["media_incomplete", 2, "credit"],
    ["media_incomplete", 3, "licence"],
    ["media_incomplete", 4, "licence"],
    ["media_incomplete", 5, "alt"],
    ["media_missing", 6, "file"],
    ["media_missing", 7, "file"],
    ["media_missing", 8, "file"],
    ["media_missing", 9, "file"],
    ["media_taxon", 10, "taxonID"],
    ["media_caste", 11, "castes"],
    ["media_kind", 12, "kind"],
  ]);
});

it("is empty where the scheme has no pictures", () => {
  expect(readMedia(makeTemporaryFolder(), settings, taxa, [])).toEqual({ media: [], mediaFindings: [] });
});
