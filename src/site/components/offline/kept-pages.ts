/** Lists the pages kept on the device, by their titles, and removes them on request. */
import { pageWords } from "../../words/client.ts";

const section = document.querySelector<HTMLElement>("#visited");
if (section !== null && "caches" in globalThis) void start(section);

async function start(section: HTMLElement): Promise<void> {
  const say = pageWords();
  section.hidden = false;
  await list(section);
  section.querySelector("button")?.addEventListener("click", async () => {
    for (const name of await ownCaches()) await caches.delete(name);
    await list(section);
    const said = section.querySelector(".cleared");
    if (said !== null) said.textContent = say("offline.cleared");
  });
}

async function list(section: HTMLElement): Promise<void> {
  const pages = await visitedPages(section.dataset["top"] ?? "/");
  section.querySelector(".kept-pages")?.replaceChildren(
    ...pages.map(({ href, title }) => {
      const item = document.createElement("li");
      item.append(Object.assign(document.createElement("a"), { href, textContent: title }));
      return item;
    }),
  );
  section.querySelector(".kept-none")?.toggleAttribute("hidden", pages.length > 0);
}

/** Names of the caches of this atlas: the host may hold others, which are not ours to list or clear. */
async function ownCaches(): Promise<string[]> {
  const top = document.documentElement.dataset["top"] ?? "/";
  return (await caches.keys()).filter((name) => name.endsWith(` ${top}`));
}

/** Pages of this language in the caches, each once, by title. */
async function visitedPages(top: string): Promise<{ href: string; title: string }[]> {
  const found = new Map<string, string>();
  for (const name of await ownCaches()) {
    const cache = await caches.open(name);
    for (const { url } of await cache.keys()) {
      const { pathname } = new URL(url);
      if (!pathname.startsWith(top) || !pathname.endsWith("/") || found.has(pathname)) continue;
      const html = (await (await cache.match(url))?.text()) ?? "";
      const title = new DOMParser().parseFromString(html.slice(0, 4_000), "text/html").title;
      found.set(pathname, (title.split(" · ")[0] ?? title) || pathname);
    }
  }
  return [...found]
    .map(([href, title]) => ({ href, title }))
    .sort((one, other) => one.title.localeCompare(other.title, document.documentElement.lang));
}
