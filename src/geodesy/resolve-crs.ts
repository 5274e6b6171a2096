import { COORDINATE_SYSTEMS } from "./coordinate-systems.ts";

/**
 * Names people write for a datum or a coordinate system, in lower case without spaces and punctuation.
 * Codes of a datum (6326 and the like) and of an ellipsoid (7030) stand for the geographic system on it,
 * since data mix the three up (Chapman and Wieczorek 2020, section on datums).
 */
const NAMES: Readonly<Record<string, string>> = Object.freeze({
  wgs84: "EPSG:4326",
  wgs1984: "EPSG:4326",
  worldgeodeticsystem1984: "EPSG:4326",
  crs84: "EPSG:4326",
  ogccrs84: "EPSG:4326",
  urnogcdefcrsogc13crs84: "EPSG:4326",
  epsg6326: "EPSG:4326",
  epsg7030: "EPSG:4326",
  etrs89: "EPSG:4258",
  etrs1989: "EPSG:4258",
  etrf89: "EPSG:4258",
  europeanterrestrialreferencesystem1989: "EPSG:4258",
  epsg6258: "EPSG:4258",
  irenet95: "EPSG:4173",
  epsg6173: "EPSG:4173",
  osgb36: "EPSG:4277",
  osgb1936: "EPSG:4277",
  ordnancesurveyofgreatbritain1936: "EPSG:4277",
  epsg6277: "EPSG:4277",
  tm75: "EPSG:4300",
  geodeticdatumof1965: "EPSG:4300",
  epsg6300: "EPSG:4300",
  tm65: "EPSG:4299",
  epsg6299: "EPSG:4299",
  ed50: "EPSG:4230",
  europeandatum1950: "EPSG:4230",
  europeandatum50: "EPSG:4230",
  epsg6230: "EPSG:4230",
  belge1972: "EPSG:4313",
  bd72: "EPSG:4313",
  epsg6313: "EPSG:4313",
  britishnationalgrid: "EPSG:27700",
  britishgrid: "EPSG:27700",
  bng: "EPSG:27700",
  osgb: "EPSG:27700",
  osgrid: "EPSG:27700",
  osgb36britishnationalgrid: "EPSG:27700",
  osgb1936britishnationalgrid: "EPSG:27700",
  irishgrid: "EPSG:29903",
  irishnationalgrid: "EPSG:29903",
  tm75irishgrid: "EPSG:29903",
  tm65irishgrid: "EPSG:29902",
  itm: "EPSG:2157",
  irishtransversemercator: "EPSG:2157",
  irenet95irishtransversemercator: "EPSG:2157",
  ed50utm30n: "EPSG:23030",
  ed50utmzone30n: "EPSG:23030",
  laea: "EPSG:3035",
  laeaeurope: "EPSG:3035",
  etrs89laea: "EPSG:3035",
  etrs89laeaeurope: "EPSG:3035",
  belgianlambert72: "EPSG:31370",
  lambert72: "EPSG:31370",
  belge1972belgianlambert72: "EPSG:31370",
});

const UTM_NAME = /^(?:wgs84)?utm(?:zone)?(\d{1,2})(n|s)$/;
const CODE = /^(?:urn:ogc:def:crs:|https?:\/\/www\.opengis\.net\/def\/crs\/)?epsg(?:[:/\s]|\/0\/|:[\d.]*:)*(\d{4,5})$/;

/**
 * The code of a coordinate system from what a record or a settings file says. Reads codes, names of systems and
 * names of datums; case, spaces and punctuation do not matter.
 *
 * @param text for example "WGS 84", "epsg:27700", "OSGB36", "UTM 30N"
 * @returns the code, or undefined for "not recorded", an empty text and anything unknown: never a guess
 * @example resolveCrs("WGS 84"); // => "EPSG:4326"
 * @example resolveCrs("not recorded"); // => undefined
 */
export function resolveCrs(text: string): string | undefined {
  const lower = text.trim().toLowerCase();
  const number = CODE.exec(lower)?.[1] ?? (/^\d{4,5}$/.test(lower) ? lower : undefined);
  const code = `EPSG:${number ?? ""}`;
  if (COORDINATE_SYSTEMS.has(code)) return code;
  const key = lower.replace(/[^a-z0-9]/g, "");
  const utm = UTM_NAME.exec(key);
  if (utm !== null) {
    const byZone = `EPSG:${utm[2] === "n" ? "326" : "327"}${(utm[1] ?? "").padStart(2, "0")}`;
    return COORDINATE_SYSTEMS.has(byZone) ? byZone : undefined;
  }
  return Object.hasOwn(NAMES, key) ? NAMES[key] : undefined;
}
