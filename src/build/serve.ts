import { createReadStream, type Stats, statSync } from "node:fs";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import { join, resolve, sep } from "node:path";
import { Mistake } from "../mistake.ts";
import { parseByteRange } from "./byte-range.ts";
import { contentTypeOf } from "./content-types.ts";
import { listenOnFree } from "./listen.ts";

export interface ServeOptions {
  /** The built atlas. */
  folder: string;
  /** The first port to try; 0 takes any free one. */
  port: number;
  /** How many ports to try, counting up; 20 by default, 1 to insist on the first. */
  tries?: number;
  /** Address prefix the atlas was built for, "/" by default. */
  base?: string;
}

/** A running server. */
export interface Serving {
  /** Where the atlas is, for example "http://localhost:4321/". */
  address: string;
  port: number;
  /** Ends it at once, open connections too. Calling it again does no harm. */
  close(): Promise<void>;
}

/**
 * Serves a built atlas to this machine only. Reads each file when it is asked for, so a rebuilt atlas shows at once.
 * Prints nothing.
 *
 * @param options the folder, and where to listen
 * @returns the address, once it listens
 * @throws Mistake when the folder is not there, or no port is free
 * @example (await serve({ folder: "atlas", port: 4321 })).address // "http://localhost:4321/"
 */
export async function serve({ folder, port, tries = 20, base = "/" }: ServeOptions): Promise<Serving> {
  const root = resolve(folder);
  if (statOf(root)?.isDirectory() !== true) {
    throw new Mistake("folder to serve", `${folder} is not there`, "build the atlas first, or name its folder");
  }
  const server = createServer((request, response) => answer(root, base, request, response));
  const taken = await listenOnFree(server, port, port === 0 ? 1 : tries);
  return {
    address: `http://localhost:${taken}${base}`,
    port: taken,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

/**
 * Ends a server when the process is told to end, by Ctrl-C or by the system; a second Ctrl-C changes nothing.
 *
 * @param serving a running server
 * @returns a promise that is kept when it has ended, so that the process can exit with 0
 * @example await endOnSignal(await serve({ folder: "atlas", port: 4321 }))
 */
export function endOnSignal(serving: Serving): Promise<void> {
  return new Promise((done) => {
    const end = (): void => void serving.close().then(done);
    for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.on(signal, end);
  });
}

function answer(root: string, base: string, request: IncomingMessage, response: ServerResponse): void {
  if (request.method !== "GET" && request.method !== "HEAD") {
    response.writeHead(405, { Allow: "GET, HEAD" }).end();
    return;
  }
  const path = pathOf(request.url ?? "/");
  if (path === "/" && base !== "/") {
    response.writeHead(302, { Location: base }).end();
    return;
  }
  const found = path?.startsWith(base) === true ? findFile(root, path.slice(base.length)) : undefined;
  if (found === "folder") response.writeHead(301, { Location: `${encodeURI(String(path))}/` }).end();
  else if (found !== undefined) send(request, response, found, 200);
  else sendNotFound(root, request, response);
}

/** The path of a request, decoded; undefined where it cannot be. A leading slash stays, `?query` goes. */
function pathOf(url: string): string | undefined {
  try {
    return decodeURIComponent(url.split(/[?#]/, 1)[0] ?? "/");
  } catch {
    return undefined;
  }
}

interface Found {
  file: string;
  stats: Stats;
}

/** A file inside the root, or "folder" where a slash is missing at the end. Hidden files and the way out are not found. */
function findFile(root: string, path: string): Found | "folder" | undefined {
  const parts = path.split(/[/\\]/);
  if (path.includes("\0") || parts.some((part) => part.startsWith(".") && part !== ".well-known")) return undefined;
  const file = join(root, ...parts);
  if (file !== root && !file.startsWith(root + sep)) return undefined;
  const stats = statOf(file);
  if (stats?.isFile() === true) return path.endsWith("/") ? undefined : { file, stats };
  if (stats?.isDirectory() !== true) return undefined;
  const index = join(file, "index.html");
  const indexStats = statOf(index);
  if (indexStats?.isFile() !== true) return undefined;
  return path === "" || path.endsWith("/") ? { file: index, stats: indexStats } : "folder";
}

function sendNotFound(root: string, request: IncomingMessage, response: ServerResponse): void {
  const page = join(root, "404.html");
  const stats = statOf(page);
  if (stats === undefined) response.writeHead(404, { "Content-Type": "text/plain; charset=utf-8" }).end("not found\n");
  else send(request, response, { file: page, stats }, 404);
}

function send(request: IncomingMessage, response: ServerResponse, { file, stats }: Found, status: 200 | 404): void {
  const etag = `"${stats.size}-${stats.mtimeMs}"`;
  const headers = {
    "Content-Type": contentTypeOf(file),
    "Cache-Control": "no-cache",
    "Accept-Ranges": "bytes",
    ETag: etag,
  };
  if (status === 200 && request.headers["if-none-match"] === etag) {
    response.writeHead(304, headers).end();
    return;
  }
  const range = status === 200 ? parseByteRange(request.headers.range, stats.size) : "whole";
  if (range === "unsatisfiable") {
    response.writeHead(416, { "Content-Range": `bytes */${stats.size}` }).end();
    return;
  }
  if (range === "whole") response.writeHead(status, { ...headers, "Content-Length": stats.size });
  else {
    const { start, end } = range;
    const part = { "Content-Length": end - start + 1, "Content-Range": `bytes ${start}-${end}/${stats.size}` };
    response.writeHead(206, { ...headers, ...part });
  }
  if (request.method === "HEAD" || stats.size === 0) response.end();
  else
    createReadStream(file, range === "whole" ? {} : range)
      .on("error", () => response.destroy())
      .pipe(response);
}

function statOf(path: string): Stats | undefined {
  return statSync(path, { throwIfNoEntry: false });
}
