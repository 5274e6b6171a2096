import { createHash } from "node:crypto";
import {
  appendFileSync,
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { Ajv } from "ajv";
import formats from "ajv-formats";
import type { FeatureCollection, Polygon } from "geojson";
import Papa from "papaparse";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openDatabase } from "../../src/engine/database.ts";
import { isRefusal } from "../../src/grids/grid.ts";
import { gridNamed } from "../../src/grids/index.ts";
import { cornersOf } from "../../src/grids/squares.ts";
import { PUBLISHED_TABLES } from "../../src/publishing/published-tables.ts";
import { runScheme } from "../support/run-scheme.ts";

const TWO_GRIDS = fileURLToPath(new URL("../golden/two-grids/input/", import.meta.url));
// The scheme lists far fewer taxa than local frequencies need.
const TABLES = PUBLISHED_TABLES.filter(({ needs }) => needs !== "large group").map(({ name }) => name);

/** Taxa whose ids and names a spreadsheet would run, and one that a reader of R or Python would take for nothing. */
const FORMULAS = [
  '=1+1,Exemplum formulum,"=HYPERLINK(""http://example.org"")",species,,en:@formula,',
  "-2+3,Exemplum minus,-1+cmd|' /C calc'!A0,species,,en:+minus,",
  "NA,Exemplum nullum,NULL,species,,en:NaN,",
];

let folder: string;
let data: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "atlaswright-downloads-"));
  cpSync(TWO_GRIDS, join(folder, "scheme"), { recursive: true });
  appendFileSync(join(folder, "scheme/checklist.csv"), `${FORMULAS.join("\n")}\n`);
  const records = FORMULAS.map(
    (row, index) => `f${index},${row.split(",")[1]},2015-06-0${index + 1},NO4525,,,,Bo Example,,present,`,
  );
  // A block of covered squares round one with a single visit, so that something is expected there.
  const around = ["SP11", "SP12", "SP13", "SP21", "SP23", "SP31", "SP32", "SP33"].flatMap((hectad) =>
    ["rubrum", "viride"].flatMap((taxon) =>
      [3, 4].map(
        (day) => `e${hectad}${taxon}${day},Exemplum ${taxon},2015-06-0${day},${hectad},,,,Bo Example,,present,`,
      ),
    ),
  );
  const middle = "eSP22,Exemplum rubrum,2015-06-03,SP22,,,,Bo Example,,present,";
  appendFileSync(join(folder, "scheme/records/walks.csv"), `${[...records, ...around, middle].join("\n")}\n`);
  writeFileSync(
    join(folder, "scheme/sensitive.csv"),
    "taxonID,level,territories,castes,months,reason,responsible,reviewDate\n=1+1,2 km,,,,@reason,officer,2030-01-01\n",
  );
  // A region of each kind of name, so that the tables of regions are written too.
  const region = (name: string, west: number, east: number) => ({
    ...{ type: "Feature", properties: { field: "county", name, code: "+1", territory: "" } },
    geometry: {
      type: "Polygon",
      coordinates: [
        [
          [west, 49],
          [east, 49],
          [east, 61],
          [west, 61],
          [west, 49],
        ],
      ],
    },
  });
  const features = [region("=1+1", -11, -4), region("East", -4, 3)];
  writeFileSync(join(folder, "scheme/regions.geojson"), JSON.stringify({ type: "FeatureCollection", features }));
  // A habitat on every walk, so that the table of their use is written too.
  const settings = join(folder, "scheme/atlas.yaml");
  const heath = "{ id: heath, label: Heath, words: [heath] }";
  writeFileSync(
    settings,
    `${readFileSync(settings, "utf8").replace("id: walks,", "id: walks, constants: { habitat: heath },")}
surroundings: { kinds: [{ id: habitat, label: Habitat, field: habitat, terms: [${heath}] }] }
`,
  );
  const { published } = await runScheme(join(folder, "scheme"), folder);
  data = join(published, "data/2021.1");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

type Cells = Record<string, string>;

function read(name: string): string {
  return readFileSync(join(data, name), "utf8");
}

function rowsOf(name: string): { fields: string[]; rows: Cells[] } {
  const { data: rows, meta, errors } = Papa.parse<Cells>(read(name), { header: true, skipEmptyLines: true });
  expect(errors).toEqual([]);
  return { fields: meta.fields ?? [], rows };
}

interface Resource {
  name: string;
  path: string;
  bytes: number;
  hash: string;
  schema?: {
    fields: { name: string; type: string }[];
    primaryKey: string[];
    foreignKeys?: { fields: string[]; reference: { resource: string; fields: string[] } }[];
  };
}

function description(): { resources: Resource[] } {
  return JSON.parse(read("datapackage.json")) as { resources: Resource[] };
}

function tableResources(): (Resource & { schema: NonNullable<Resource["schema"]> })[] {
  return description().resources.flatMap((resource) =>
    resource.schema === undefined ? [] : [{ ...resource, schema: resource.schema }],
  );
}

/** Lexical forms of Table Schema 2.0 (https://datapackage.org/standard/table-schema/) for the types used here. */
const FORMS: Readonly<Record<string, RegExp>> = {
  string: /^[\s\S]*$/,
  integer: /^-?\d+$/,
  number: /^-?\d+(\.\d+)?([eE][+-]?\d+)?$/,
  boolean: /^(true|false)$/,
  year: /^-?\d{4}$/,
};
/** Columns that are empty where there is nothing to give; the column judged says so of figures. */
const MAY_BE_EMPTY = [
  ...["authorship", "rank", "within", "first_year", "last_year"],
  ...["net_percent", "interval_low", "interval_high", "turnover", "turnover_low", "turnover_high"],
  ...["day_10", "day_25", "day_50", "day_75", "day_90", "median_low", "median_high"],
  ...["share", "share_low", "share_high", "shift"],
  ...["estimate", "low", "high", "reason", "ratio", "ratio_low", "ratio_high"],
  ...["expected", "completeness", "sample_coverage"],
  ...["expected_without_single_records", "completeness_without_single_records"],
  ...["occupancy_km2", "occupancy_below_km2", "occupancy_reason", "extent_km2", "extent_below_km2", "extent_reason"],
  ...["code", "region_territory", "best_third"],
];

describe("datapackage.json", () => {
  it.each(["datapackage", "dataresource", "tableschema", "tabledialect"])(
    "keeps the official schema of Data Package 2.0: %s",
    (part) => {
      const schema = JSON.parse(
        readFileSync(new URL(`../reference/data-package-2.0/${part}.json`, import.meta.url), "utf8"),
      ) as object;
      const ajv = new Ajv({ allErrors: true, strict: false });
      formats.default(ajv, { mode: "full" });
      ajv.addFormat("textarea", true);
      const validate = ajv.compile(schema);
      const whole = description();
      const tables = tableResources();
      const parts: Record<string, object[]> = {
        datapackage: [whole],
        dataresource: whole.resources,
        tableschema: tables.map(({ schema: own }) => own),
        tabledialect: tables.map((table) => (table as unknown as { dialect: object }).dialect),
      };
      const checked = parts[part] ?? [];
      expect(checked.length).toBeGreaterThan(0);
      for (const one of checked)
        expect({ valid: validate(one), errors: validate.errors }).toEqual({ valid: true, errors: null });
    },
  );

  it("describes every table in every format, by path, size and SHA-256", () => {
    const files = readdirSync(data).filter((name) => /\.(csv|parquet|geojson)$/.test(name));
    expect(
      description()
        .resources.map(({ path }) => path)
        .sort(),
    ).toEqual(files.sort());
    expect(tableResources().map(({ path }) => path)).toEqual(TABLES.map((name) => `${name}.csv`));
    for (const { path, bytes, hash } of description().resources) {
      expect(bytes).toBe(statSync(join(data, path)).size);
      expect(hash).toBe(
        `sha256:${createHash("sha256")
          .update(readFileSync(join(data, path)))
          .digest("hex")}`,
      );
    }
  });
});

describe("SHA256SUMS", () => {
  it("gives the sum of every other file", () => {
    const sums = read("SHA256SUMS")
      .trimEnd()
      .split("\n")
      .map((line) => line.split("  ") as [string, string]);
    const files = readdirSync(data, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name).slice(data.length + 1));
    expect(sums.map(([, path]) => path).sort()).toEqual(files.filter((path) => path !== "SHA256SUMS").sort());
    for (const [sum, path] of sums)
      expect(
        createHash("sha256")
          .update(readFileSync(join(data, path)))
          .digest("hex"),
      ).toBe(sum);
  });
});

describe.each(TABLES)("%s.csv", (name) => {
  it("has exactly the fields it declares, in order, with values of their types", () => {
    const { fields, rows } = rowsOf(`${name}.csv`);
    const declared = tableResources().find(({ path }) => path === `${name}.csv`)?.schema.fields ?? [];
    expect(fields).toEqual(declared.map((field) => field.name));
    expect(rows.length).toBeGreaterThan(0);
    const wrong = rows.flatMap((row) =>
      declared
        .filter(
          (field) =>
            !(row[field.name] === ""
              ? MAY_BE_EMPTY.includes(field.name)
              : FORMS[field.type]?.test(row[field.name] ?? "")),
        )
        .map((field) => `${field.name}: ${row[field.name]}`),
    );
    expect(wrong).toEqual([]);
  });

  it("keeps its keys: each primary key once, each foreign key in its table", () => {
    const { rows } = rowsOf(`${name}.csv`);
    const schema = tableResources().find(({ path }) => path === `${name}.csv`)?.schema;
    const key = (row: Cells, fields: readonly string[] = []) => JSON.stringify(fields.map((field) => row[field]));
    expect(new Set(rows.map((row) => key(row, schema?.primaryKey))).size).toBe(rows.length);
    for (const { fields, reference } of schema?.foreignKeys ?? []) {
      const to = description().resources.find((resource) => resource.name === reference.resource);
      const known = new Set(rowsOf(to?.path ?? "").rows.map((row) => key(row, reference.fields)));
      expect(rows.filter((row) => !known.has(key(row, fields)))).toEqual([]);
    }
  });

  it("says that it is invented, in every row", () => {
    expect(new Set(rowsOf(`${name}.csv`).rows.map((row) => row["invented"]))).toEqual(new Set(["true"]));
  });

  it("is UTF-8 without a mark and ends every row with a line feed", () => {
    const text = read(`${name}.csv`);
    expect(text.startsWith("\uFEFF")).toBe(false);
    expect(text).not.toContain("\r");
    expect(text.endsWith("\n")).toBe(true);
  });

  it("begins no text like a formula", () => {
    const { rows } = rowsOf(`${name}.csv`);
    const texts =
      tableResources()
        .find(({ path }) => path === `${name}.csv`)
        ?.schema.fields.filter(({ type }) => type === "string") ?? [];
    expect(
      rows
        .flatMap((row) => texts.map((field) => row[field.name] ?? ""))
        .filter((text) => /^[=+\-@＝＋－＠\t\r\n]/.test(text)),
    ).toEqual([]);
  });

  it("agrees with its Parquet file, row by row", async () => {
    const database = await openDatabase({ spillFolder: join(folder, "spill") });
    const parquet = await database.rows<Record<string, unknown>>(
      `SELECT * FROM read_parquet('${join(data, `${name}.parquet`)}')`,
    );
    database.close();
    const { rows } = rowsOf(`${name}.csv`);
    const types = new Map(
      tableResources()
        .find(({ path }) => path === `${name}.csv`)
        ?.schema.fields.map((field) => [field.name, field.type]),
    );
    const typed = (row: Cells) =>
      Object.fromEntries(
        Object.entries(row).map(([field, cell]) => {
          const type = types.get(field);
          if (type === "string") return [field, cell];
          if (cell === "") return [field, null];
          return [field, type === "boolean" ? cell === "true" : Number(cell)];
        }),
      );
    expect(parquet).toEqual(rows.map(typed));
  });
});

describe("the tables", () => {
  it("are sorted: by every field in turn, squares the large ones first", () => {
    for (const name of TABLES.filter((table) => table !== "squares")) {
      const { rows } = rowsOf(`${name}.csv`);
      const types = tableResources().find(({ path }) => path === `${name}.csv`)?.schema.fields ?? [];
      const sorted = rows.toSorted((one, other) => {
        for (const { name: field, type } of types) {
          const [a = "", b = ""] = [one[field], other[field]];
          if (a !== b)
            return (
              (type === "string" || type === "boolean"
                ? Buffer.compare(Buffer.from(a), Buffer.from(b))
                : Number(a) - Number(b)) || 0
            );
        }
        return 0;
      });
      expect(rows).toEqual(sorted);
    }
    const squares = rowsOf("squares.csv").rows.map((row) =>
      [-Number(row["resolution_m"]), row["grid"], row["square"]].join(" "),
    );
    expect(squares).toEqual(squares.toSorted());
  });

  it("keep hectads that look like nothing or like no", () => {
    const squares = rowsOf("squares.csv").rows.map((row) => row["square"]);
    expect(squares).toEqual(expect.arrayContaining(["NA10", "NO42", "NA10C", "NO42M"]));
    expect(rowsOf("taxa.csv").rows.map((row) => row["taxon_id"])).toEqual(
      expect.arrayContaining(["NA", "'=1+1", "'-2+3"]),
    );
  });

  it("hold every taxon's own rows again in a file of its own", () => {
    const all = read("taxon_squares.csv").split("\n");
    const files = readdirSync(join(data, "species"));
    expect(files.sort()).toEqual(
      ["album", "album-nigrum", "formulum", "minus", "nigrum", "nullum", "rubrum", "viride"]
        .map((name) => `exemplum-${name}.csv`)
        .toSorted(),
    );
    expect(files.flatMap((file) => read(`species/${file}`).trimEnd().split("\n").slice(1)).sort()).toEqual(
      all.slice(1, -1).sort(),
    );
    for (const file of files) expect(read(`species/${file}`).split("\n")[0]).toBe(all[0]);
    expect(rowsOf("species/exemplum-formulum.csv").rows.map((row) => row["taxon_id"])).toEqual(["'=1+1", "'=1+1"]);
  });
});

describe("squares.geojson", () => {
  const features = () => (JSON.parse(read("squares.geojson")) as FeatureCollection<Polygon>).features;

  it("has one closed ring of five positions a square, counter-clockwise, within the globe (RFC 7946)", () => {
    expect(features().length).toBe(14);
    for (const { geometry } of features()) {
      expect(geometry.coordinates.length).toBe(1);
      const ring = geometry.coordinates[0] ?? [];
      expect(ring.length).toBe(5);
      expect(ring[0]).toEqual(ring[4]);
      // Twice the signed area (the shoelace formula): positive is counter-clockwise.
      const area = ring
        .slice(1)
        .reduce((sum, [x = 0, y = 0], index) => sum + (ring[index]?.[0] ?? 0) * y - x * (ring[index]?.[1] ?? 0), 0);
      expect(area).toBeGreaterThan(0);
      expect(
        ring.every(([longitude = 999, latitude = 999]) => Math.abs(longitude) <= 180 && Math.abs(latitude) <= 90),
      ).toBe(true);
    }
  });

  it("puts the corners where the grid does", () => {
    for (const { properties, geometry } of features()) {
      const grid = gridNamed(properties?.["grid"], {});
      const square = grid.parse(properties?.["square"]);
      if (isRefusal(square)) throw new Error(`${properties?.["square"]} is no square`);
      cornersOf(square).forEach((corner, index) => {
        const [longitude, latitude] = grid.unproject(corner);
        // Published to six decimals of a degree.
        expect(geometry.coordinates[0]?.[index]?.[0]).toBeCloseTo(longitude, 5);
        expect(geometry.coordinates[0]?.[index]?.[1]).toBeCloseTo(latitude, 5);
      });
    }
  });

  it("says visits by period and that it is invented", () => {
    const square = features().find(({ id }) => id === "SK12");
    expect(square?.properties).toMatchObject({ visits_earlier: 3, visits_recent: 5, records: 14, invented: true });
  });
});
