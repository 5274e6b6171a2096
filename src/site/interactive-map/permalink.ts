/** What a reader sees of the map, as the end of an address: nothing of it is sent to a server. */
export interface MapPlace {
  readonly taxon?: string;
  /** Value of a choice of the panel. */
  readonly view?: string;
  readonly zoom?: number;
  readonly longitude?: number;
  readonly latitude?: number;
  /** Code of the chosen square. */
  readonly square?: string;
}

/**
 * A place as the part of an address after its #.
 *
 * @example hashOfPlace({ taxon: "garden", view: "both", zoom: 7.2, longitude: -1.61, latitude: 55.07 }) // "#taxon=garden&view=both&at=7.2,-1.610,55.070"
 */
export function hashOfPlace({ taxon, view, zoom, longitude, latitude, square }: MapPlace): string {
  const parts = [
    taxon === undefined ? "" : `taxon=${encodeURIComponent(taxon)}`,
    view === undefined ? "" : `view=${encodeURIComponent(view)}`,
    zoom === undefined || longitude === undefined || latitude === undefined
      ? ""
      : `at=${Math.round(zoom * 10) / 10},${longitude.toFixed(3)},${latitude.toFixed(3)}`,
    square === undefined ? "" : `square=${encodeURIComponent(square)}`,
  ].filter(Boolean);
  return parts.length === 0 ? "" : `#${parts.join("&")}`;
}

/**
 * Reads a place from the part of an address after its #; what is no place is left out.
 *
 * @example placeOfHash("#taxon=garden&at=7.2,-1.61,55.07").zoom // 7.2
 */
export function placeOfHash(hash: string): MapPlace {
  const read = new URLSearchParams(hash.replace(/^#/, ""));
  const [zoom = Number.NaN, longitude = Number.NaN, latitude = Number.NaN] = (read.get("at") ?? "")
    .split(",")
    .map((text) => (text.trim() === "" ? Number.NaN : Number(text)));
  const isPlace = zoom >= 0 && zoom <= 24 && Math.abs(longitude) <= 180 && Math.abs(latitude) <= 90;
  const [taxon, view, square] = ["taxon", "view", "square"].map((name) => read.get(name) || undefined);
  return {
    ...(taxon === undefined ? {} : { taxon }),
    ...(view === undefined ? {} : { view }),
    ...(isPlace ? { zoom, longitude, latitude } : {}),
    ...(square === undefined ? {} : { square }),
  };
}
