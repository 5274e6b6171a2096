import { marksBefore } from "../../words/fallback.ts";

/**
 * A message as HTML: what stands between two asterisks twice is set bold. Values that went into it are HTML already.
 *
 * @example withBold("Look at **T4**.") // "Look at <b>T4</b>."
 */
export function withBold(message: string): string {
  return message.replace(/\*\*(.+?)\*\*/g, "<b>$1</b>");
}

/** A label as it stands within a sentence. @example lowered("Queen") // "queen" */
export function lowered(label: string): string {
  const at = marksBefore(label);
  return label.slice(0, at) + label.charAt(at).toLocaleLowerCase() + label.slice(at + 1);
}
