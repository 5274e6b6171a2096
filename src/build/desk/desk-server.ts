import { randomBytes } from "node:crypto";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import { Mistake } from "../../mistake.ts";
import { type Desk, DeskEnded } from "../../review/desk/desk.ts";
import { listenOnFree } from "../listen.ts";
import type { Serving } from "../serve.ts";
import { type DeskApi, deskApi } from "./desk-api.ts";
import { guard, HEADERS, MOST_BYTES } from "./guard.ts";
import { type PageFile, pageFiles } from "./page-files.ts";

const TRIES = 20;

/** What a request is answered with. */
interface Answer {
  status: number;
  type: string;
  body: Buffer | string;
}

/**
 * Serves the review desk to this machine alone, under an address that holds a random token. It writes `decisions.csv`, a
 * copy of it from before in `review/`, and nothing else.
 *
 * @param port the first to try; 0 takes any free one
 * @returns the address, once it listens
 * @throws {Mistake} when no port is free
 * @example (await serveDesk(desk, 4322)).address // => "http://127.0.0.1:4322/6c1f…/"
 */
export async function serveDesk(desk: Desk, port: number): Promise<Serving> {
  const token = randomBytes(24).toString("base64url");
  const at = `/${token}/`;
  const files = pageFiles(at);
  const api = deskApi(desk);
  let taken = port;
  const server = createServer((request, response) => {
    answer(request, { token, port: taken, files, api })
      .catch((error: unknown) => (request.readableAborted ? told(400, "It was broken off.") : asAnswer(error)))
      .then((given) => send(response, given))
      .catch(() => response.destroy());
  });
  server.requestTimeout = PATIENCE;
  server.headersTimeout = PATIENCE;
  taken = await listenOnFree(server, port, port === 0 ? 1 : TRIES);
  return {
    address: `http://127.0.0.1:${taken}${at}`,
    port: taken,
    async close() {
      await desk.end();
      await new Promise<void>((done) => {
        server.close(() => done());
        server.closeAllConnections();
      });
    },
  };
}

async function answer(
  request: IncomingMessage,
  { token, port, files, api }: { token: string; port: number; files: ReadonlyMap<string, PageFile>; api: DeskApi },
): Promise<Answer> {
  const guarded = guard(request, token, port);
  if ("status" in guarded) return told(guarded.status, guarded.says);
  const { path, query } = guarded;
  if (request.method === "POST") {
    if (!path.startsWith("api/")) return told(404, "There is nothing here.");
    if (!/^application\/json\b/.test(request.headers["content-type"] ?? "")) return told(415, "Send JSON.");
    return asJson(await api.post(path.slice("api/".length), await bodyOf(request)));
  }
  if (path.startsWith("api/")) return asJson(await api.get(path.slice("api/".length), query));
  const file = files.get(/^square\/[\w-]+\/[\w-]+$/.test(path) ? "" : path);
  return file === undefined ? told(404, "There is nothing here.") : { status: 200, ...file };
}

/** How long a page may take to send what it asks, in milliseconds: it is on this machine. */
const PATIENCE = 10_000;

/** A body too large to be a ruling. */
class TooLarge extends Error {}

async function bodyOf(request: IncomingMessage): Promise<unknown> {
  const parts: Buffer[] = [];
  let size = 0;
  if (Number(request.headers["content-length"]) > MOST_BYTES) throw new TooLarge();
  for await (const part of request as AsyncIterable<Buffer>) {
    size += part.length;
    if (size > MOST_BYTES) throw new TooLarge();
    parts.push(part);
  }
  try {
    return JSON.parse(Buffer.concat(parts).toString("utf8")) as unknown;
  } catch {
    throw new Mistake("the request", "is not JSON", "send it again");
  }
}

function asAnswer(error: unknown): Answer {
  if (error instanceof TooLarge) return told(413, "That is more than a ruling can hold.");
  if (error instanceof Mistake) return told(422, error.message);
  if (error instanceof DeskEnded) return told(503, "The desk has ended.");
  process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
  return told(500, "Something failed that should not; the terminal says what. Nothing was written.");
}

function asJson(value: unknown): Answer {
  if (value === undefined || value === null) return told(404, "There is nothing here.");
  return { status: 200, type: "application/json; charset=utf-8", body: JSON.stringify(value) };
}

function told(status: number, says: string): Answer {
  return { status, type: "text/plain; charset=utf-8", body: `${says}\n` };
}

function send(response: ServerResponse, { status, type, body }: Answer): void {
  response.writeHead(status, {
    ...HEADERS,
    ...(status === 405 ? { Allow: "GET, POST" } : {}),
    ...(status === 413 ? { Connection: "close" } : {}),
    "Content-Type": type,
    "Content-Length": Buffer.byteLength(body),
  });
  response.end(body);
}
