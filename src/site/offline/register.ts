/** Starts the worker that keeps pages on the device, and says when a newer edition has been published. */
const { top: atlas = "/", base = "/" } = document.documentElement.dataset;
const workers = navigator.serviceWorker as ServiceWorkerContainer | undefined;

if (workers !== undefined) {
  workers.addEventListener("message", ({ data }: MessageEvent<{ newer?: string }>) => {
    if (data.newer !== undefined) document.querySelector("#newer")?.removeAttribute("hidden");
  });
  addEventListener("load", () => {
    workers
      .register(`${atlas}worker.js`, { scope: atlas, updateViaCache: "none" })
      .then(() => workers.ready)
      // Refused, in a private window for one: the site works without.
      .then(
        ({ active }) => active?.postMessage({ renew: base, page: location.pathname }),
        () => {},
      );
  });
}

export {};
