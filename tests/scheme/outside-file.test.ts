import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { charactersOf, outsideTaxa } from "../../src/publishing/outside-taxa.ts";
import { namesOfTaxa } from "../../src/publishing/taxon-names.ts";
import { EVERY_TAXON } from "../../src/scheme/outside-file.ts";
import { readScheme } from "../../src/scheme/scheme.ts";
import { writeHiddenScheme } from "../support/hidden-species.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";
import { mistakeOf } from "./mistakes.ts";

const HEADER = "taxonID,scientificName,vernacularNames,shortName,kind,bodyPlan,castes,lead";
const FLY = "outside-fly,Musca ficta,en:Feigned fly,,hoverfly,hoverfly,,A fly.";

function read(rows: readonly string[], characters: readonly string[] = []) {
  const folder = join(makeTemporaryFolder(), "scheme");
  writeHiddenScheme(folder, null, "");
  writeFileSync(join(folder, "outside.csv"), `${[HEADER, ...rows].join("\n")}\n`);
  const lines = ["taxonID,castes,form,part,state,note,reliability,evidence", ...characters];
  if (characters.length > 0) writeFileSync(join(folder, "characters.csv"), `${lines.join("\n")}\n`);
  return readScheme(folder);
}

describe("outside.csv", () => {
  it("may be missing", () => {
    const folder = join(makeTemporaryFolder(), "scheme");
    writeHiddenScheme(folder, null, "");
    expect(readScheme(folder).outside).toEqual([]);
  });

  it("names what is taken for the group, with characters of its own beside those of every taxon", () => {
    const scheme = read([FLY], ["outside-fly,,,eyes,large,,settles,sight", "*,,,eyes,narrow,,supports,sight"]);
    const [fly] = outsideTaxa(scheme, namesOfTaxa(scheme));
    expect(fly).toMatchObject({ slug: "musca-ficta", vernacular_name: "Feigned fly", kind: "hoverfly" });
    expect(fly?.characters.map(({ state }) => state)).toEqual(["large"]);
    expect(charactersOf(scheme, EVERY_TAXON).map(({ state }) => state)).toEqual(["narrow"]);
  });

  it("gives no slug that a taxon of the atlas has", () => {
    const scheme = read([FLY.replace("Musca ficta", "Bombus fictus"), FLY.replace("outside-fly", "outside-other")]);
    const names = namesOfTaxa(scheme);
    const taken = [...names.values()].map(({ taxon, ...rest }) => ({ ...rest, taxon, slug: "bombus-fictus" }));
    const slugs = outsideTaxa(scheme, new Map(taken.map((each) => [each.taxon.taxonID, each]))).map(({ slug }) => slug);
    expect(slugs).toEqual([`bombus-fictus-${taken.length + 1}`, "musca-ficta"]);
  });

  it.each([
    ["fly,Musca ficta,,,hoverfly,,,", "does not begin with outside-"],
    [`${FLY}\n${FLY}`, "is there already"],
    [FLY.replace("hoverfly,,A", "hoverfly,egg,A"), "is no caste"],
    [FLY.replace(",hoverfly,hoverfly", ",,hoverfly"), "say in a word what it is"],
  ])("refuses %s", (row, words) => {
    expect(mistakeOf(() => read([row]))).toContain(words);
  });

  it("is what an account's look-alike names by id", () => {
    const folder = read([FLY]).folder;
    const account = "\n---\ntaxonID: secret\nlook_alikes:\n  - outside: outside-wasp\n---\n".trimStart();
    mkdirSync(join(folder, "species"), { recursive: true });
    writeFileSync(join(folder, "species", "secret.md"), account);
    expect(mistakeOf(() => readScheme(folder))).toContain("outside-wasp");
  });
});
