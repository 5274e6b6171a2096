/** Asks the worker to keep the pages a button names, and says how many it could. */
import { pageWords } from "../../words/client.ts";

const part = document.querySelector<HTMLElement>(".keep");
const workers = navigator.serviceWorker as ServiceWorkerContainer | undefined;
if (part !== null && workers !== undefined) start(part, workers);

function start(part: HTMLElement, workers: ServiceWorkerContainer): void {
  const say = pageWords();
  const said = part.querySelector("p");
  const tell = (words: string) => {
    if (said !== null) said.textContent = words;
  };
  part.hidden = false;
  part.querySelector("button")?.addEventListener("click", async () => {
    tell(say("offline.keeping"));
    const { active } = await workers.ready;
    const { base = "/", top = "/" } = document.documentElement.dataset;
    const below = base.slice(top.length);
    const paths = (part.dataset["paths"] ?? "").split(" ").map((path) => `${below}${path}`);
    active?.postMessage({ keep: paths });
  });
  workers.addEventListener("message", ({ data }: MessageEvent<{ kept?: number; of?: number }>) => {
    const { kept, of } = data;
    if (kept === undefined || of === undefined) return;
    tell(kept === of ? say("offline.keeps", { kept }) : say("offline.some", { kept, of }));
  });
}
