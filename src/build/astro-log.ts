import { channel } from "node:diagnostics_channel";

/** Line by line what Astro says of a build. */
export interface AstroMessage {
  level: string;
  label: string | null;
  message: string;
}

/** Name of the channel the messages are published on. */
export const ASTRO_LOG = "atlaswright:astro";

/**
 * Where Astro sends its messages instead of the console: Astro loads this module itself, and bundles a second copy of
 * it with the pages, so it can only pass them on through a channel that the whole process shares.
 *
 * @returns a destination in the shape Astro asks for
 * @example astroLog().write({ level: "warn", label: null, message: "an empty page" }) // reaches whoever subscribed
 */
export default function astroLog(): { write(message: AstroMessage): void } {
  return { write: (message) => channel(ASTRO_LOG).publish(message) };
}
