import type { Browser } from "playwright-core";

/** What a first visit to a page costs. */
export interface PageSpeed {
  /** Bytes over the network until nothing more is asked for, heads of answers included. */
  readonly bytes: number;
  /** Milliseconds to the largest contentful paint. */
  readonly paint: number;
  /** Cumulative layout shift. */
  readonly shift: number;
}

/** Slow 4G as laboratory tests of pages have it: round trip 150 ms, 1.6 Mbit/s down, 750 kbit/s up. */
const NETWORK = { offline: false, latency: 150, downloadThroughput: 200_000, uploadThroughput: 93_750 };
const SLOWDOWN = 4;

/** What the page's script keeps of the browser's own measures. */
const WATCH = `
  globalThis.measured = { paint: 0, shift: 0 };
  new PerformanceObserver((list) => { for (const entry of list.getEntries()) measured.paint = entry.startTime; }).observe({ type: "largest-contentful-paint", buffered: true });
  new PerformanceObserver((list) => { for (const entry of list.getEntries()) if (!entry.hadRecentInput) measured.shift += entry.value; }).observe({ type: "layout-shift", buffered: true });
`;

/** Visits a page once with an empty cache, on a slow network and a slow processor, on a phone's screen. */
export async function pageSpeed(browser: Browser, address: string): Promise<PageSpeed> {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, serviceWorkers: "block" });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  let bytes = 0;
  session.on("Network.loadingFinished", ({ encodedDataLength }) => {
    bytes += encodedDataLength;
  });
  await session.send("Network.enable");
  await session.send("Network.emulateNetworkConditions", NETWORK);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWDOWN });
  await page.addInitScript(WATCH);
  await page.goto(address, { waitUntil: "networkidle" });
  // The browser tells of a paint when it is idle, which a slowed one is late.
  await page.waitForTimeout(1_000);
  const { paint, shift } = await page.evaluate(
    () => (globalThis as unknown as { measured: { paint: number; shift: number } }).measured,
  );
  await context.close();
  return { bytes, paint, shift };
}

/** The middle of each measure. @example median([{ bytes: 1, paint: 5, shift: 0 }]).paint // 5 */
export function median(runs: readonly PageSpeed[]): PageSpeed {
  const middle = (of: (run: PageSpeed) => number) =>
    runs.map(of).toSorted((one, other) => one - other)[Math.floor(runs.length / 2)] ?? 0;
  return {
    bytes: middle(({ bytes }) => bytes),
    paint: middle(({ paint }) => paint),
    shift: middle(({ shift }) => shift),
  };
}
