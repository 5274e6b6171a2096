import { join } from "node:path";
import { isoDate } from "./calendar.ts";
import type { KnownError } from "./errors/spoil-rows.ts";
import type { Row, Source } from "./source.ts";
import { SPECIES } from "./species.ts";
import { EPOCHS } from "./truth.ts";
import type { World } from "./world.ts";
import { writeTable } from "./write.ts";

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
  writeTable(join(folder, "truth.csv"), ["taxon_id", "territory", "hectad", "epoch", "tetrads", "first_arrival"], squares(world));
  writeTable(
    join(folder, "rows.csv"),
    ["file", "row", "occurrence_id", "taxon_id", "castes", "territory", "hectad", "tetrad", "date"],
    sources.flatMap(trueRows),
  );
  writeTable(
    join(folder, "errors.csv"),
    ["file", "row", "occurrence_id", "kind", "field", "right"],
    sources.flatMap(({ source, rows, errors }) =>
      errors.map(({ index, kind, column, right }) => [source.file, index + 2, idOf(source, rows[index] as Row), kind, column, right]),
    ),
  );
}

/** One row a species, 10 km square and epoch, with the letters of the 2 km squares where it lives. */
function squares({ land, truth }: World): (string | number)[][] {
  const table: (string | number)[][] = [];
  SPECIES.forEach(({ taxonId }, species) => {
    EPOCHS.forEach((epoch, e) => {
      let last: (string | number)[] | undefined;
      for (const { index, territory, hectad, letter } of land.tetrads) {
        if (truth.isPresent(species, index, e)) {
          const arrival = truth.arrivalYear(species, index) ?? "";
          if (last?.[2] === hectad && last[1] === territory) {
            last[4] = `${last[4]}${letter}`;
            last[5] = arrival === "" ? "" : Math.min(Number(last[5]), arrival);
          } else {
            last = [taxonId, territory, hectad, epoch, letter, arrival];
            table.push(last);
          }
        }
      }
    });
  });
  return table;
}

/** What each row of a source goes back to. Row 1 is the header. */
function trueRows({ source, rows }: MadeSource): (string | number)[][] {
  return rows.map((row, i) => {
    const { species, counts, tetrad, day } = row.sighting;
    const castes = Object.entries(counts).map(([caste, count]) => `${count} ${caste}`).join(" | ");
    const taxon = (SPECIES[species] as { taxonId: string }).taxonId;
    const { territory, hectad, letter } = tetrad;
    return [source.file, i + 2, idOf(source, row), taxon, castes, territory, hectad, hectad + letter, isoDate(day)];
  });
}

function idOf({ idColumn }: Source, row: Row): string {
  return row.cells[idColumn] as string;
}
