import type { Database } from "../engine/database.ts";
import { REGION_FIELDS, type Region, regionKey } from "../scheme/regions-file.ts";

/**
 * Fills `record_regions`: the regions of `regions.geojson` that each record states, by name or code, one a field at most. A
 * text that names none of them says nothing. Each distinct text is read once. Needs `stated_records`.
 *
 * @param regions of the scheme; without any the table is empty
 */
export async function interpretRegions(database: Database, regions: readonly Region[] = []): Promise<void> {
  const known = new Map(
    regions.flatMap(({ id, field, name, code }) =>
      [name, code].filter(Boolean).map((text) => [`${field} ${regionKey(text)}`, id] as const),
    ),
  );
  const fields = REGION_FIELDS.filter((field) => regions.some((region) => region.field === field));
  const read: { field: string; text: string; region_id: string }[] = [];
  for (const field of fields) {
    const texts = await database.rows<{ text: string }>(
      `SELECT DISTINCT "${field}" AS text FROM stated_records WHERE "${field}" <> '' ORDER BY text`,
    );
    for (const { text } of texts) {
      const region_id = known.get(`${field} ${regionKey(text)}`);
      if (region_id !== undefined) read.push({ field, text, region_id });
    }
  }
  const filler = await database.fill("region_texts", { field: "text", said: "text", region_id: "text" });
  filler.add({
    field: read.map(({ field }) => field),
    said: read.map(({ text }) => text),
    region_id: read.map(({ region_id }) => region_id),
  });
  filler.done();
  const parts = fields.map(
    (field) =>
      `SELECT r.record_no, t.field, t.region_id FROM stated_records AS r JOIN region_texts AS t ON t.field = '${field}' AND t.said = r."${field}"`,
  );
  const nothing = "SELECT 0 AS record_no, '' AS field, '' AS region_id WHERE false";
  await database.run(
    `CREATE OR REPLACE TABLE record_regions AS ${parts.join(" UNION ALL ") || nothing} ORDER BY record_no, field; DROP TABLE region_texts`,
  );
}
