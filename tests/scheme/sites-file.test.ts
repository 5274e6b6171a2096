import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { readSites } from "../../src/scheme/sites-file.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

function sites(text: string) {
  const folder = makeTemporaryFolder();
  writeFileSync(join(folder, "sites.csv"), text);
  return readSites(folder);
}

it("reads sites by name, by point, or both, and none where there is no file", () => {
  expect(readSites(makeTemporaryFolder())).toEqual([]);
  expect(sites("name,gridReference,uncertainty_m\nLong Mead,,800\n,SP500061,1200\n")).toMatchObject([
    { name: "Long Mead", uncertainty_m: 800 },
    { gridReference: "SP500061", uncertainty_m: 1200 },
  ]);
});

it("refuses a site that is nowhere and an uncertainty that is none", () => {
  expect(() => sites("name,uncertainty_m\n,800\n")).toThrow("has neither a name nor a point");
  expect(() => sites("name,uncertainty_m\nLong Mead,0\n")).toThrow("write metres");
  expect(() => sites("name,uncertainty_m\nLong Mead,far\n")).toThrow("write metres");
});
