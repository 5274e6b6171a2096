import { subscribe, unsubscribe } from "node:diagnostics_channel";
import { describe, expect, it } from "vitest";
import astroLog, { ASTRO_LOG } from "../../src/build/astro-log.ts";

describe("astroLog", () => {
  it("passes messages on to whoever subscribed, and to nobody otherwise", () => {
    const heard: unknown[] = [];
    const hear = (message: unknown) => void heard.push(message);
    subscribe(ASTRO_LOG, hear);
    astroLog().write({ level: "warn", label: null, message: "an empty page" });
    unsubscribe(ASTRO_LOG, hear);
    astroLog().write({ level: "warn", label: null, message: "another" });
    expect(heard).toEqual([{ level: "warn", label: null, message: "an empty page" }]);
  });
});
