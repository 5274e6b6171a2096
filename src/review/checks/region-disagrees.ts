import { sqlBeside } from "../../engine/database.ts";
import type { GridId } from "../../grids/grid.ts";
import { REGION_FIELDS, type RegionField } from "../../scheme/regions-file.ts";
import { addFindings, type Check, type CheckContext } from "../check.ts";
import { mayBeRight, type RegionPlace } from "../stated-regions.ts";

/** A stated region in which the place does not lie. */
export const regionDisagrees: Check = {
  name: "region_disagrees",
  severity: "ask",
  asks: "Does the place, however far it may reach, lie outside the country, county or vice-county the record states? The number of a vice-county is never read as a place.",
  find,
};

type Stated = RegionPlace & { place_id: number; field: RegionField; region: string; grid: GridId };

async function find({ database, scheme }: CheckContext): Promise<void> {
  const agree = mayBeRight(scheme.regions);
  const odd: { place_id: number; field: RegionField; region: string }[] = [];
  const stated = REGION_FIELDS.map(
    (field) =>
      `SELECT DISTINCT p.place_id, '${field}' AS field, r."${field}" AS region, l.longitude, l.latitude, p.reach_m, l.grid
       FROM placed_records AS p JOIN raw_records AS r USING (record_no) JOIN places AS l USING (place_id) WHERE p.counts AND trim(r."${field}") <> ''`,
  );
  await database.batches(`${stated.join("\nUNION ALL\n")} ORDER BY ALL`, (columns, size) => {
    for (let index = 0; index < size; index += 1) {
      const one = Object.fromEntries(
        Object.entries(columns).map(([name, values]) => [name, values[index]]),
      ) as unknown as Stated;
      if (!agree(one.field, one.region, one))
        odd.push({ place_id: Number(one.place_id), field: one.field, region: one.region });
    }
  });
  const filler = await database.fill("odd_regions", { place_id: "integer", field: "text", region: "text" });
  filler.add({
    place_id: odd.map(({ place_id }) => place_id),
    field: odd.map(({ field }) => field),
    region: odd.map(({ region }) => region),
  });
  filler.done();
  if (odd.length > 0) await addFindings(database, regionDisagrees, sqlBeside(import.meta.url, "region-disagrees.sql"));
}
