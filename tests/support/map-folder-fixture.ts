import { cpSync, readFileSync } from "node:fs";
import path from "node:path";
import { AtlasFile, SquaresFile, TaxonFile } from "../../src/publishing/contracts.ts";
import { writeMapFolder } from "../../src/publishing/map-folder.ts";
import { cornersOnEarth } from "./map-fixture.ts";
import type { RenderedFixture } from "./rendered-fixture.ts";

/** Adds the files of the folder `map/`, from the fixture's own squares, with the tetrads A and Y of the first. */
export function addMap({ published, folder }: Pick<RenderedFixture, "published" | "folder">): void {
  const read = (name: string): unknown => JSON.parse(readFileSync(path.join(published, name), "utf8"));
  const atlas = AtlasFile.parse(read("atlas.json"));
  const { squares: hectads } = SquaresFile.parse(read("squares.json"));
  const codes = hectads.map(({ square }) => square);
  const squares = [...codes, `${codes[0] ?? ""}A`, `${codes[0] ?? ""}Y`].map((code, id) => ({
    id,
    ...cornersOnEarth("british", code),
  }));
  const taxa = atlas.taxa.map(({ slug }) => TaxonFile.parse(read(`taxa/${slug}.json`)));
  const visits = new Map([
    ...hectads.map(({ square, visits: own }): [string, number[]] => [square, own]),
    [`${codes[0] ?? ""}A`, [4]],
  ]);
  writeMapFolder(path.join(published, "map"), squares, atlas, taxa, {}, visits);
  cpSync(path.join(published, "map"), path.join(folder, "map"), { recursive: true });
}
