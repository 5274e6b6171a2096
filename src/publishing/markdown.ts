import { Marked } from "marked";

const marked = new Marked({
  gfm: true,
  renderer: {
    // Text between angle brackets is text: a scheme's files can come from many hands.
    html: ({ text }) => escapeHtml(text),
    image: ({ text }) => escapeHtml(text),
    link({ href, tokens }) {
      const inner = this.parser.parseInline(tokens);
      return /^(?:https?:|mailto:|\.{0,2}\/|#)/i.test(href) ? `<a href="${escapeHtml(href)}">${inner}</a>` : inner;
    },
  },
});

/**
 * Markdown as HTML that can hold no script, style or frame: raw HTML is shown as text, links go to web addresses,
 * mail or pages of the atlas only, images are left to the tables of media.
 *
 * @example renderMarkdown("*B. pratorum* <script>") // => "<p><em>B. pratorum</em> &lt;script&gt;</p>\n"
 */
export function renderMarkdown(text: string): string {
  return marked.parse(text, { async: false });
}

/** Text for HTML: the five characters that mean something there are written as references. */
export function escapeHtml(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replaceAll("'", "&#39;");
}
