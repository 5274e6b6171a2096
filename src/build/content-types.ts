import { extname } from "node:path";

/** Media type by the ending of a file's name: https://www.iana.org/assignments/media-types, unless another source is given. */
const CONTENT_TYPES: Readonly<Record<string, string>> = {
  ".css": "text/css; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".geojson": "application/geo+json",
  ".gpkg": "application/geopackage+sqlite3",
  ".gz": "application/gzip",
  ".html": "text/html; charset=utf-8",
  ".ico": "image/vnd.microsoft.icon",
  ".jpg": "image/jpeg",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".m4a": "audio/mp4",
  ".md": "text/markdown; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".mp3": "audio/mpeg",
  ".parquet": "application/vnd.apache.parquet",
  ".pdf": "application/pdf",
  // The format's own specification, version 3, section "Recommended MIME Type".
  ".pmtiles": "application/vnd.pmtiles",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".txt": "text/plain; charset=utf-8",
  ".webmanifest": "application/manifest+json",
  ".webp": "image/webp",
  ".woff2": "font/woff2",
  ".xml": "application/xml",
  ".yaml": "application/yaml",
  ".zip": "application/zip",
};

/**
 * The media type a file of an atlas is served with.
 *
 * @param path a file's name or path
 * @returns a value for the Content-Type header; "application/octet-stream" for an ending not known here
 * @example contentTypeOf("tiles/grid.pmtiles") // "application/vnd.pmtiles"
 */
export function contentTypeOf(path: string): string {
  return CONTENT_TYPES[extname(path).toLowerCase()] ?? "application/octet-stream";
}
