import type { Database } from "../engine/database.ts";
import { NOT_ASSIGNED } from "../measures/regions/measure-regions.ts";
import { fewestTaxa } from "../names/fewest-taxa.ts";
import type { Region } from "../scheme/regions-file.ts";
import type { Scheme } from "../scheme/scheme.ts";
import type { RegionFile, RegionsFile } from "./contracts.ts";
import { type Expected, expectedInRegion, recordedLately } from "./expected.ts";
import type { TaxonNames } from "./taxon-names.ts";

type Totals = Omit<RegionFile, "slug" | "name" | "code" | "territory" | "taxa" | "taxa_list" | "expected">;
type TaxonRow = Omit<RegionFile["taxa_list"][number], "slug"> & { region_id: string; taxon_id: string };

/** Regions of a scheme by id, each once, in the order of the file. */
export function regionsById(regions: readonly Region[]): Map<string, Region> {
  const known = new Map<string, Region>();
  for (const region of regions) if (!known.has(region.id)) known.set(region.id, region);
  return known;
}

/** Fills `region_facts`, what the scheme says of each region, for the published tables. */
export async function fillRegionFacts(database: Database, { regions }: Pick<Scheme, "regions">): Promise<void> {
  const none = [...new Set(regions.map(({ field }) => field))].map((field) => ({
    ...{ field, id: NOT_ASSIGNED, name: "not assigned", code: "", territory: "" },
  }));
  const rows = [...regionsById(regions).values(), ...none];
  const filler = await database.fill("region_facts", {
    field: "text",
    region_id: "text",
    name: "text",
    code: "text",
    territory: "text",
  });
  filler.add({
    field: rows.map(({ field }) => field),
    region_id: rows.map(({ id }) => id),
    name: rows.map(({ name }) => name),
    code: rows.map(({ code }) => code),
    territory: rows.map(({ territory }) => territory),
  });
  filler.done();
}

/** The files of all regions, and the list of them by layer; both empty for a scheme without regions. */
export async function regionFiles(
  database: Database,
  scheme: Scheme,
  names: ReadonlyMap<string, TaxonNames>,
  expected: Expected,
): Promise<{ list: RegionsFile; regions: RegionFile[] }> {
  const totals = new Map(
    (await database.rows<Totals>("SELECT * FROM region_totals ORDER BY field, region_id")).map((row) => [
      row.region_id,
      row,
    ]),
  );
  const taxa = Map.groupBy(
    await database.rows<TaxonRow>(
      `SELECT region_id, taxon_id, records, hectads, tetrads, first_year, last_year FROM region_taxa WHERE region_id <> '${NOT_ASSIGNED}' ORDER BY region_id, records DESC, taxon_id`,
    ),
    ({ region_id }) => region_id,
  );
  const recorded = Map.groupBy(
    await database.rows<{ region_id: string; taxon_id: string }>(
      "SELECT region_id, taxon_id FROM region_names ORDER BY region_id, taxon_id",
    ),
    ({ region_id }) => region_id,
  );
  const graph = { descendants: scheme.checklist.descendants };
  const regions = [...regionsById(scheme.regions).values()].flatMap(({ id, name, code, territory }): RegionFile[] => {
    const own = totals.get(id);
    if (own === undefined) return [];
    const taxa_list = (taxa.get(id) ?? []).map(({ region_id: _, taxon_id, ...counts }) => ({
      slug: names.get(taxon_id)?.slug ?? "",
      ...counts,
    }));
    const seen = (recorded.get(id) ?? []).map(({ taxon_id }) => taxon_id);
    return [
      {
        ...own,
        ...{ slug: id, name, code, territory, taxa: fewestTaxa(seen, graph) },
        taxa_list,
        expected: expectedInRegion(expected, id, recordedLately(taxa_list, scheme)),
      },
    ];
  });
  return { list: { land_known: scheme.landSquares !== null, layers: await layersOf(database, regions) }, regions };
}

async function layersOf(database: Database, regions: readonly RegionFile[]): Promise<RegionsFile["layers"]> {
  const bases = await database.rows<{ field: string; basis: string; records: number }>(
    "SELECT field, basis, records FROM region_bases ORDER BY field, basis",
  );
  return [...Map.groupBy(regions, ({ field }) => field)].map(([field, own]) => {
    const of = (basis: string) => bases.find((row) => row.field === field && row.basis === basis)?.records ?? 0;
    const [boundary, outside, no_square] = [of("boundary"), of("outside"), of("no_square")];
    return {
      field,
      regions: own.map(({ taxa_list: _, expected: __, ...summary }) => summary),
      not_assigned: { records: boundary + outside + no_square, boundary, outside, no_square },
    };
  });
}
