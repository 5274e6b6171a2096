/**
 * Keeps pages on the device, so that they open without a network. While there is one it always asks it first: what is
 * kept is only ever the answer where the network gives none, but for files whose name changes with their content.
 * Which files each language keeps from its first visit on stands in its `offline.json`; pages are kept when visited.
 */
const top = new URL(self.registration.scope);
/** Other sites of the host, another atlas among them, keep theirs in the same place: the names say whose these are. */
const CORE = `core-1 ${top.pathname}`;
const VISITED = `visited-1 ${top.pathname}`;
const MOST_VISITED = 400;
/** How long a page may keep a reader waiting before the kept one is shown, in milliseconds. */
const PATIENCE = 4000;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("message", (event) => {
  const { data, source } = event;
  if (typeof data?.renew === "string") event.waitUntil(arrive(data, source));
  if (Array.isArray(data?.keep)) event.waitUntil(keepChosen(data.keep, source));
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  const address = new URL(request.url);
  if (request.method !== "GET" || address.origin !== top.origin || !address.pathname.startsWith(top.pathname)) return;
  const path = address.pathname.slice(top.pathname.length);
  // Tables and tiles are large, and asked for in pieces.
  if (/^(data|map)\//.test(path)) return;
  if (request.mode === "navigate") event.respondWith(page(event, address));
  else if (/(^|\/)_astro\//.test(path)) event.respondWith(keptFirst(request, address));
  else event.respondWith(networkFirst(event, request, address));
});

async function page(event, address) {
  const answer = await networkFirst(event, event.request, address).catch(() => undefined);
  if (answer !== undefined) return answer;
  const folder = await languageOf(address);
  return (await kept(new URL("offline/", folder))) ?? (await kept(new URL("offline/", top))) ?? Response.error();
}

/** The network's answer, which is kept; the kept one where there is none, or none in time. */
async function networkFirst(event, request, address) {
  const asked = fetch(request, request.mode === "navigate" ? { cache: "no-cache" } : {}).then((answer) => {
    if (answer.ok && !answer.redirected && answer.status === 200) event.waitUntil(store(address, answer.clone()));
    return answer;
  });
  const old = await kept(address);
  if (old === undefined) return asked;
  asked.catch(() => {});
  return Promise.race([asked.catch(() => old), later(PATIENCE).then(() => old)]);
}

async function keptFirst(request, address) {
  return (await kept(address)) ?? fetch(request);
}

async function kept(address) {
  return await caches.match(bare(address), { ignoreVary: true });
}

async function store(address, answer) {
  const core = await caches.open(CORE);
  const isCore = (await core.match(bare(address))) !== undefined;
  const cache = isCore ? core : await caches.open(VISITED);
  await cache.put(bare(address), answer);
  if (isCore) return;
  const keys = await cache.keys();
  for (const key of keys.slice(0, Math.max(0, keys.length - MOST_VISITED))) await cache.delete(key);
}

/** The page a reader came in by was fetched before the worker was there: it is kept first, then what its language keeps. */
async function arrive({ renew: folder, page: own }, source) {
  const address = new URL(own, top);
  if (address.pathname.startsWith(top.pathname) && (await kept(address)) === undefined) {
    const answer = await fetch(address).catch(() => undefined);
    if (answer?.ok === true && !answer.redirected) await store(address, answer);
  }
  await renew(new URL(folder, top), source);
}

/** Fetches what a language keeps and is not kept yet, and tells the page when it is of another edition than before. */
async function renew(folder, source) {
  const list = await fetch(new URL("offline.json", folder), { cache: "no-cache" }).then(
    (answer) => (answer.ok ? answer.json() : undefined),
    () => undefined,
  );
  if (list === undefined) return;
  const core = await caches.open(CORE);
  const noted = await core.match(new URL("offline.json", folder).href).then((note) => note?.json());
  const before = new Map(noted?.files ?? []);
  for (const [path, hash] of list.files) {
    const address = new URL(path, top).href;
    if (before.get(path) === hash && (await core.match(address)) !== undefined) continue;
    const answer = await fetch(address, { cache: "no-cache" }).catch(() => undefined);
    if (answer?.ok !== true) return;
    await core.put(address, answer.redirected ? new Response(await answer.blob(), { headers: answer.headers }) : answer);
  }
  const now = new Set(list.files.map(([path]) => path));
  for (const path of before.keys()) if (!now.has(path)) await drop(path, core);
  await core.put(new URL("offline.json", folder).href, new Response(JSON.stringify(list)));
  if (noted !== undefined && noted.edition !== list.edition) source?.postMessage({ newer: list.edition });
  source?.postMessage({ ready: list.files.length });
}

/** A style or script that is no longer listed still serves pages that were visited before: it is kept as long as these. */
async function drop(path, core) {
  const address = new URL(path, top);
  const own = await core.match(address.href);
  await core.delete(address.href);
  if (own !== undefined && /(^|\/)_astro\//.test(path)) await store(address, own);
}

/** Keeps pages a reader chose, with the number that could be had. */
async function keepChosen(paths, source) {
  const visited = await caches.open(VISITED);
  let had = 0;
  for (const path of paths) {
    const address = new URL(path, top).href;
    const answer = await fetch(address, { cache: "no-cache" }).catch(() => undefined);
    if (answer?.ok !== true || answer.redirected) continue;
    await visited.put(address, answer);
    had += 1;
  }
  source?.postMessage({ kept: had, of: paths.length });
}

/** The folder of the language an address lies in: the one that keeps a list. */
async function languageOf(address) {
  const [first = ""] = address.pathname.slice(top.pathname.length).split("/");
  const folder = new URL(`${first}/`, top);
  return first !== "" && (await kept(new URL("offline.json", folder))) !== undefined ? folder : top;
}

function bare(address) {
  return address.origin + address.pathname;
}

function later(milliseconds) {
  return new Promise((done) => setTimeout(done, milliseconds));
}
