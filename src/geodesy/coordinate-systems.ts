/** A coordinate system this project can transform. Coordinates are always longitude or easting first. */
export interface CoordinateSystem {
  /** EPSG code as written everywhere here, for example "EPSG:27700". */
  readonly code: string;
  readonly name: string;
  readonly kind: "geographic" | "projected";
  /** Code of the geographic system it stands on; its own code for a geographic system. */
  readonly datum: string;
  /** PROJ definition without the shift to WGS84. */
  readonly projection: string;
  /** PROJ parameters of the shift to WGS84 (position-vector signs); empty where the datum is taken as WGS84. */
  readonly shift: string;
  /** The operation `shift` stands for, as shown to readers. */
  readonly shiftName: string;
  /** How far, in metres, the shift may be off within the system's area. */
  readonly accuracy: number;
  /** Longitude the projection is centred on, where it fails far from it. */
  readonly centralMeridian?: number;
  readonly source: string;
}

interface Datum {
  readonly name: string;
  readonly ellipsoid: string;
  readonly shift: string;
  readonly shiftName: string;
  readonly accuracy: number;
  readonly source: string;
}

const AIRY_MODIFIED = "+a=6377340.189 +rf=299.3249646";
const IRISH_SHIFT = "+towgs84=482.5,-130.6,564.6,-1.042,-0.214,-0.631,8.15";

/**
 * Geographic systems. Accuracy in metres. For OSGB36 it is the worst of the 40 official OSTN15 test points
 * (4.94 m, mean 1.94 m), not the 2 m of the register. ETRS89 and IRENET95 are taken as WGS84, as the register
 * does; the two drift apart by about 2.5 cm a year.
 */
const DATUMS: Readonly<Record<string, Datum>> = Object.freeze({
  "EPSG:4326": {
    name: "WGS 84",
    ellipsoid: "+datum=WGS84",
    shift: "",
    shiftName: "",
    accuracy: 0,
    source: "EPSG:4326",
  },
  "EPSG:4258": {
    name: "ETRS89",
    ellipsoid: "+ellps=GRS80",
    shift: "",
    shiftName: "EPSG:1149",
    accuracy: 1,
    source: "EPSG:1149, null shift",
  },
  "EPSG:4173": {
    name: "IRENET95",
    ellipsoid: "+ellps=GRS80",
    shift: "",
    shiftName: "EPSG:1678",
    accuracy: 1,
    source: "EPSG:1678, null shift",
  },
  "EPSG:4277": {
    name: "OSGB36",
    ellipsoid: "+ellps=airy",
    shift: "+towgs84=446.448,-125.157,542.06,0.15,0.247,0.842,-20.489",
    shiftName: "EPSG:1314",
    accuracy: 5,
    source: "EPSG:1314; accuracy from the official OSTN15 test points",
  },
  "EPSG:4300": {
    name: "TM75",
    ellipsoid: AIRY_MODIFIED,
    shift: IRISH_SHIFT,
    shiftName: "EPSG:1954",
    accuracy: 1,
    source: "EPSG:1954",
  },
  "EPSG:4299": {
    name: "TM65",
    ellipsoid: AIRY_MODIFIED,
    shift: IRISH_SHIFT,
    shiftName: "EPSG:1641",
    accuracy: 1,
    source: "EPSG:1641",
  },
  "EPSG:4230": {
    name: "ED50",
    ellipsoid: "+ellps=intl",
    shift: "+towgs84=-86,-96,-120,0,0,0,0",
    shiftName: "EPSG:1138",
    accuracy: 6,
    source: "EPSG:1138, the operation whose area names the Channel Islands",
  },
  "EPSG:4313": {
    name: "Belge 1972",
    ellipsoid: "+ellps=intl",
    shift: "+towgs84=-106.8686,52.2978,-103.7239,0.3366,-0.457,1.8422,-1.2747",
    shiftName: "EPSG:15929",
    accuracy: 1,
    source: "EPSG:15929, turned to position-vector signs",
  },
});

interface Projection {
  readonly code: string;
  readonly name: string;
  readonly datum: string;
  readonly definition: string;
  readonly centralMeridian?: number;
}

/** Projected systems; parameters from the EPSG register, version 10.076. */
const PROJECTIONS: readonly Projection[] = Object.freeze([
  {
    code: "EPSG:27700",
    name: "British National Grid",
    datum: "EPSG:4277",
    centralMeridian: -2,
    definition: "+proj=tmerc +lat_0=49 +lon_0=-2 +k=0.9996012717 +x_0=400000 +y_0=-100000",
  },
  {
    code: "EPSG:29903",
    name: "TM75 / Irish Grid",
    datum: "EPSG:4300",
    centralMeridian: -8,
    definition: "+proj=tmerc +lat_0=53.5 +lon_0=-8 +k=1.000035 +x_0=200000 +y_0=250000",
  },
  {
    code: "EPSG:29902",
    name: "TM65 / Irish Grid",
    datum: "EPSG:4299",
    centralMeridian: -8,
    definition: "+proj=tmerc +lat_0=53.5 +lon_0=-8 +k=1.000035 +x_0=200000 +y_0=250000",
  },
  {
    code: "EPSG:2157",
    name: "Irish Transverse Mercator",
    datum: "EPSG:4173",
    centralMeridian: -8,
    definition: "+proj=tmerc +lat_0=53.5 +lon_0=-8 +k=0.99982 +x_0=600000 +y_0=750000",
  },
  {
    code: "EPSG:23030",
    name: "ED50 / UTM zone 30N",
    datum: "EPSG:4230",
    centralMeridian: -3,
    definition: "+proj=utm +zone=30",
  },
  {
    code: "EPSG:3035",
    name: "ETRS89 / LAEA Europe",
    datum: "EPSG:4258",
    definition: "+proj=laea +lat_0=52 +lon_0=10 +x_0=4321000 +y_0=3210000",
  },
  {
    code: "EPSG:31370",
    name: "Belge 1972 / Belgian Lambert 72",
    datum: "EPSG:4313",
    definition:
      "+proj=lcc +lat_0=90 +lon_0=4.36748666666667 +lat_1=51.1666672333333 +lat_2=49.8333339 +x_0=150000.013 +y_0=5400088.438",
  },
  ...utmProjections(),
]);

function utmProjections(): Projection[] {
  return [...Array(60).keys()].flatMap((index) => {
    const zone = index + 1;
    const row = { datum: "EPSG:4326", centralMeridian: 6 * zone - 183 };
    const number = String(zone).padStart(2, "0");
    return [
      { ...row, code: `EPSG:326${number}`, name: `WGS 84 / UTM zone ${zone}N`, definition: `+proj=utm +zone=${zone}` },
      {
        ...row,
        code: `EPSG:327${number}`,
        name: `WGS 84 / UTM zone ${zone}S`,
        definition: `+proj=utm +zone=${zone} +south`,
      },
    ];
  });
}

function geographicSystem(code: string, datum: Datum): CoordinateSystem {
  const { name, shift, shiftName, accuracy, source } = datum;
  const projection = `+proj=longlat ${datum.ellipsoid} +no_defs +type=crs`;
  return Object.freeze({ code, name, kind: "geographic", datum: code, projection, shift, shiftName, accuracy, source });
}

function projectedSystem(row: Projection): CoordinateSystem {
  const datum = DATUMS[row.datum];
  if (datum === undefined) throw new Error(`${row.code} stands on ${row.datum}, which has no row`);
  const { code, name, centralMeridian } = row;
  const { shift, shiftName, accuracy, source } = datum;
  const projection = `${row.definition} ${datum.ellipsoid} +units=m +no_defs +type=crs`;
  const meridian = centralMeridian === undefined ? {} : { centralMeridian };
  return Object.freeze({
    code,
    name,
    kind: "projected",
    datum: row.datum,
    projection,
    shift,
    shiftName,
    accuracy,
    ...meridian,
    source: `${code} on ${row.datum}: ${source}`,
  });
}

/** Every known coordinate system by its code, WGS 84 first. */
export const COORDINATE_SYSTEMS: ReadonlyMap<string, CoordinateSystem> = new Map(
  [
    ...Object.entries(DATUMS).map(([code, datum]) => geographicSystem(code, datum)),
    ...PROJECTIONS.map(projectedSystem),
  ].map((system) => [system.code, system]),
);

/**
 * The coordinate system of a code.
 *
 * @param code "EPSG:" and a number
 * @returns its row of the table
 * @throws {Error} for a code the table does not hold, with the code and the way out
 * @example coordinateSystem("EPSG:27700").name; // => "British National Grid"
 */
export function coordinateSystem(code: string): CoordinateSystem {
  const system = COORDINATE_SYSTEMS.get(code);
  if (system === undefined)
    throw new Error(`unknown coordinate system “${code}”; use one of the codes in coordinate-systems.ts`);
  return system;
}
