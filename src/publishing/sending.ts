import type { Settings } from "../scheme/settings.ts";
import type { AtlasFile } from "./contracts.ts";

/**
 * Where records are sent: what the settings say; else their contact, where it is an address of mail.
 *
 * @returns empty texts where there is nowhere to send
 * @example sendingOf({ ...settings, contact: "a@b.example" }) // => { email: "a@b.example", url: "", text: "" }
 */
export function sendingOf({ sending, contact }: Pick<Settings, "sending" | "contact">): AtlasFile["sending"] {
  return sending ?? { email: contact.includes("@") ? contact : "", url: "", text: "" };
}
