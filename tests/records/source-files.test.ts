import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { sourceFiles } from "../../src/records/source-files.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";
import { source } from "./reading.ts";

function folderOf(...names: string[]): string {
  const folder = makeTemporaryFolder();
  mkdirSync(join(folder, "records"));
  for (const name of names) writeFileSync(join(folder, name), "");
  return folder;
}
const namesOf = (folder: string, files: string | string[]) =>
  sourceFiles(folder, [source({ files })]).map(({ name }) => name);

describe("files of records", () => {
  it("are named one by one or by a pattern, sorted", () => {
    const folder = folderOf("records/b-2.csv", "records/b-1.csv", "records/b+1.tsv", "top.csv");
    expect(namesOf(folder, "records/b-*.csv")).toEqual(["records/b-1.csv", "records/b-2.csv"]);
    expect(namesOf(folder, ["top.csv", "records/b+*"])).toEqual(["top.csv", "records/b+1.tsv"]);
    expect(namesOf(folder, "*.csv")).toEqual(["top.csv"]);
  });

  it("that are not there stop the build with the way out", () => {
    const folder = folderOf();
    for (const files of ["records/a.csv", "records/*.csv", "nowhere/*.csv"])
      expect(() => namesOf(folder, files)).toThrow(
        `atlas.yaml: source walks names ${files}, and no such file is in ${folder}; correct files, or put the records there`,
      );
  });

  it("may be folders: one that is named, and by a pattern those that say they are archives", () => {
    const folder = folderOf("records/a.csv");
    for (const name of ["records/walks", "records/others"]) mkdirSync(join(folder, name));
    writeFileSync(join(folder, "records/walks/meta.xml"), "<archive/>");
    expect(namesOf(folder, "records/others")).toEqual(["records/others"]);
    expect(namesOf(folder, "records/*")).toEqual(["records/a.csv", "records/walks"]);
  });

  it("belong to one source", () => {
    const folder = folderOf("records/a.csv");
    const both = [source({ id: "one", files: "records/a.csv" }), source({ id: "two", files: "records/*.csv" })];
    expect(() => sourceFiles(folder, both)).toThrow(
      "atlas.yaml: file records/a.csv belongs to two sources; name it in one of them only",
    );
  });

  it("do not lie outside the scheme's folder, through a link either", () => {
    const [folder, other] = [folderOf(), folderOf("secret.csv")];
    symlinkSync(join(other, "secret.csv"), join(folder, "records/a.csv"));
    expect(() => namesOf(folder, "records/a.csv")).toThrow(/leads out of/);
    expect(() => namesOf(folder, "records/*")).toThrow(/leads out of/);
  });
});
