import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { namesToThank } from "../../src/publishing/thanks.ts";
import { everyReading } from "../support/published-bytes.ts";
import { runScheme } from "../support/run-scheme.ts";

const TWO_GRIDS = fileURLToPath(new URL("../golden/two-grids/input/", import.meta.url));

describe("namesToThank", () => {
  it("takes names apart, joins spellings and sorts by surname", () => {
    expect(namesToThank(["Zoë Quill | Al Reed", "Reed, Al", "ZOE QUILL", "Bo Ash; Cy Ash"])).toEqual([
      "Bo Ash",
      "Cy Ash",
      "Zoë Quill",
      "Al Reed",
    ]);
  });
  it("takes no address, number or initial for a name", () => {
    expect(namesToThank(["a.reed@example.org", "https://example.org/0001", "07700 900000", "-", "A."])).toEqual([]);
  });
});

describe("a scheme that thanks its recorders", () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "atlaswright-thanks-"));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  async function publishedWith(name: string, setting: string): Promise<string> {
    const scheme = join(folder, name, "scheme");
    cpSync(TWO_GRIDS, scheme, { recursive: true });
    appendFileSync(
      join(scheme, "records/walks.csv"),
      ["Zoë Quill", "QUILL Zoe; Al Reed", "Al Reed & Zoë Quill"]
        .map((who, index) => `t${index},Exemplum rubrum,2015-06-0${index + 1},NO4525,,,,${who},,present,\n`)
        .join(""),
    );
    appendFileSync(join(scheme, "atlas.yaml"), setting);
    writeFileSync(join(scheme, "suppressed.csv"), "name\nzoe quill\n");
    return (await runScheme(scheme, join(folder, name))).published;
  }
  const thanks = (published: string) =>
    (JSON.parse(readFileSync(join(published, "atlas.json"), "utf8")) as { thanks: string[] }).thanks;
  const holding = async (published: string, name: RegExp) =>
    (await everyReading(published)).filter(({ bytes }) => name.test(bytes.toString("utf8"))).map(({ where }) => where);

  it("names them, but never one of the suppressed, alone or with others", async () => {
    const published = await publishedWith("asked", "recorders: { acknowledged: true }\n");
    expect(thanks(published)).toContain("Al Reed");
    expect(await holding(published, /quill/i)).toEqual([]);
    expect(await holding(published, /Al Reed/)).toEqual(["atlas.json"]);
  });

  it("names nobody in any byte where it has not said so", async () => {
    const published = await publishedWith("unasked", "");
    expect(thanks(published)).toEqual([]);
    expect(await holding(published, /quill|al reed/i)).toEqual([]);
  });
});
