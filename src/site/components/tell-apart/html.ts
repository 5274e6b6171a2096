import { marksBefore } from "../../words/fallback.ts";

/** Text as HTML: signs that mean something there are written as references. @example escapeHtml("a<b") // "a&lt;b" */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

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
