import { describe, expect, it } from "vitest";
import { contentTypeOf } from "../../src/build/content-types.ts";

describe("contentTypeOf", () => {
  it("gives the example of its docstring", () => {
    expect(contentTypeOf("tiles/grid.pmtiles")).toBe("application/vnd.pmtiles");
  });

  // Debian's mailcap list (/etc/mime.types) and the IANA registry agree on these.
  it.each([
    ["a.geojson", "application/geo+json"],
    ["a.webmanifest", "application/manifest+json"],
    ["a.woff2", "font/woff2"],
    ["A.SVG", "image/svg+xml"],
    ["a.parquet", "application/vnd.apache.parquet"],
    ["a.gpkg", "application/geopackage+sqlite3"],
  ])("%s: %s", (name, type) => {
    expect(contentTypeOf(name)).toBe(type);
  });

  it("names the encoding of text, since pages and tables are UTF-8", () => {
    expect(contentTypeOf("index.html")).toBe("text/html; charset=utf-8");
    expect(contentTypeOf("squares.csv")).toBe("text/csv; charset=utf-8");
  });

  it("calls what it does not know a stream of bytes", () => {
    expect(contentTypeOf("a.unknown")).toBe("application/octet-stream");
    expect(contentTypeOf("LICENSE")).toBe("application/octet-stream");
  });
});
