import { timingSafeEqual } from "node:crypto";
import type { IncomingMessage } from "node:http";

/** Header the page sends its token in; a page of another site cannot send it. */
export const TOKEN_HEADER = "x-desk-token";

/** Most bytes of a body: a ruling is a few hundred. */
export const MOST_BYTES = 65_536;

/**
 * The page may load what this server gives and nothing else, be shown in no frame, and put no text into the document as
 * markup.
 */
export const HEADERS: Readonly<Record<string, string>> = Object.freeze({
  "Content-Security-Policy":
    "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; require-trusted-types-for 'script'; trusted-types 'none'",
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Permissions-Policy": "camera=(), microphone=(), geolocation=()",
  "Cache-Control": "no-store",
});

/** What is asked for behind the token, or the status and words it is refused with. */
export type Guarded = { path: string; query: URLSearchParams } | { status: number; says: string };

/**
 * Lets through only requests that were made to this machine by name, carry the token in their address, and, where they
 * ask for data or write, in their header too: a site that knows the port, or points its own name at this machine, gets
 * nothing.
 *
 * @param token of this run
 * @param port the server listens on
 */
export function guard(request: IncomingMessage, token: string, port: number): Guarded {
  const { host, origin } = request.headers;
  const names = [`127.0.0.1:${port}`, `localhost:${port}`];
  if (host === undefined || !names.includes(host)) return refuse(403, "This desk answers its own address only.");
  if (request.method !== "GET" && request.method !== "POST") return refuse(405, "The desk knows GET and POST.");
  if (origin !== undefined && !names.some((name) => origin === `http://${name}`))
    return refuse(403, "This desk answers its own pages only.");
  const site = request.headers["sec-fetch-site"];
  if (site !== undefined && site !== "same-origin" && site !== "none")
    return refuse(403, "This desk answers its own pages only.");
  const url = URL.parse(request.url ?? "/", "http://desk");
  if (url === null) return refuse(400, "That is no address.");
  const [, first = "", ...rest] = url.pathname.split("/");
  if (!same(first, token)) return refuse(403, "Open the desk by the whole address that was printed.");
  const path = rest.join("/");
  const needsHeader = path.startsWith("api/") || request.method === "POST";
  if (needsHeader && !same(String(request.headers[TOKEN_HEADER] ?? ""), token))
    return refuse(403, "Open the desk by the whole address that was printed.");
  return { path, query: url.searchParams };
}

function refuse(status: number, says: string): Guarded {
  return { status, says };
}

/** Compares in a time that tells nothing of where two texts differ. */
function same(given: string, token: string): boolean {
  const [a, b] = [Buffer.from(given), Buffer.from(token)];
  return a.length === b.length && timingSafeEqual(a, b);
}
