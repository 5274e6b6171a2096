import { join } from "node:path";
import { isoDate } from "./calendar.ts";
import type { KnownError } from "./errors/spoil-rows.ts";
import type { Tetrad } from "./land.ts";
import type { Row, Source } from "./source.ts";
import { SPECIES } from "./species.ts";
import { EPOCHS } from "./truth.ts";
import type { World } from "./world.ts";
import { quoted, writeLines } from "./write.ts";

/** A source with the rows made for it and the errors put into them. */
export interface MadeSource {
  readonly source: Source;
  readonly rows: readonly Row[];
  readonly errors: readonly KnownError[];
}

/**
 * Writes the hidden truth beside the records: `truth.csv`, `rows.csv`, `errors.csv`.
 *
 * @param folder exists
 * @example writeTruth(".build/demonstration", world, sources)
 */
export function writeTruth(folder: string, world: World, sources: readonly MadeSource[]): void {
  writeLines(join(folder, "truth.csv"), "taxon_id,territory,hectad,epoch,tetrads,first_arrival", squares(world));
  writeLines(
    join(folder, "rows.csv"),
    "file,row,occurrence_id,taxon_id,castes,territory,hectad,tetrad,date",
    sources.flatMap(trueRows),
  );
  writeLines(join(folder, "errors.csv"), "file,row,occurrence_id,kind,field,right", sources.flatMap(errorRows));
}

/** One line a species, 10 km square and epoch, with the letters of the 2 km squares where it lives. */
function squares({ land, truth }: World): string[] {
  const lines: string[] = [];
  SPECIES.forEach(({ taxonId }, species) => {
    EPOCHS.forEach((epoch, e) => {
      let hectad: Tetrad | undefined;
      let letters = "";
      let arrival = Infinity;
      const finish = (): void => {
        if (hectad && letters !== "") {
          const year = Number.isFinite(arrival) ? arrival : "";
          lines.push(`${taxonId},${hectad.territory},${hectad.hectad},${epoch},${letters},${year}`);
        }
        letters = "";
        arrival = Infinity;
      };
      for (const tetrad of land.tetrads) {
        if (tetrad.hectad !== hectad?.hectad) {
          finish();
          hectad = tetrad;
        }
        if (truth.isPresent(species, tetrad.index, e)) {
          letters += tetrad.letter;
          arrival = Math.min(arrival, truth.arrivalYear(species, tetrad.index) ?? Infinity);
        }
      }
      finish();
    });
  });
  return lines;
}

/** What each row of a source goes back to. Row 1 is the header. */
function trueRows({ source, rows }: MadeSource): string[] {
  return rows.map((row, i) => {
    const { species, counts, tetrad, day } = row.sighting;
    const castes = Object.entries(counts)
      .map(([caste, count]) => `${count} ${caste}`)
      .join(" | ");
    const { territory, hectad, letter } = tetrad;
    const what = `${source.file},${i + 2},${idOf(source, row)},${SPECIES[species]?.taxonId},${castes}`;
    return `${what},${territory},${hectad},${hectad}${letter},${isoDate(day)}`;
  });
}

function errorRows({ source, rows, errors }: MadeSource): string[] {
  return errors.map(({ index, kind, column, right }) => {
    const told = [column, right].map((text) => quoted(text, ",")).join(",");
    return `${source.file},${index + 2},${idOf(source, rows[index] as Row)},${kind},${told}`;
  });
}

function idOf({ idColumn }: Source, row: Row): string {
  return row.cells[idColumn] as string;
}
