/**
 * A text within HTML or an attribute, in the build and in the browser.
 *
 * @example escapeHtml("<i>") // "&#60;i&#62;"
 */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
