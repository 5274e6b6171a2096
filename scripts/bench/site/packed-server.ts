import { existsSync, readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { parseByteRange } from "../../../src/build/byte-range.ts";
import { contentTypeOf } from "../../../src/build/content-types.ts";

/** Types that a server of pages sends compressed. */
const PACKED = /^(text\/|application\/(json|javascript|geo\+json|manifest)|image\/svg)/;

/** Serves a folder as a public host does, texts in gzip. @returns its address, and how to end it */
export async function servePacked(folder: string): Promise<{ address: string; close: () => Promise<void> }> {
  const kept = new Map<string, Buffer>();
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? "/", "http://here").pathname);
    const file = join(folder, path, path.endsWith("/") ? "index.html" : "");
    if (!existsSync(file) || !statSync(file).isFile()) return void response.writeHead(404).end();
    const type = contentTypeOf(file);
    const packs = PACKED.test(type) && request.headers.range === undefined;
    const body = kept.get(file) ?? (packs ? gzipSync(readFileSync(file), { level: 9 }) : readFileSync(file));
    if (packs) kept.set(file, body);
    const range = parseByteRange(request.headers.range, body.length);
    if (typeof range === "object") {
      const { start, end } = range;
      response.writeHead(206, {
        "Content-Type": type,
        "Content-Range": `bytes ${start}-${end}/${body.length}`,
        "Content-Length": end - start + 1,
      });
      return void response.end(body.subarray(start, end + 1));
    }
    const encoding = packs ? { "Content-Encoding": "gzip" } : {};
    response.writeHead(200, { "Content-Type": type, "Content-Length": body.length, ...encoding }).end(body);
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const place = server.address();
  const port = place !== null && typeof place === "object" ? place.port : 0;
  return {
    address: `http://localhost:${port}/`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}
