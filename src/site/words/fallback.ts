/**
 * English words on a page of another language. They are said between two marks, which no text of a scheme holds, and
 * when the page is whole the marks become `lang="en"`, or nothing where no element may stand.
 */
const [BEGIN, END] = ["\uE000", "\uE001"] as const;
/** Elements that hold text alone. */
const TEXT_ALONE = new Set(["title", "desc", "option", "script", "style", "textarea"]);

/** Marks words as English. @example markEnglish("Season") // "\uE000Season\uE001" */
export function markEnglish(words: string): string {
  return `${BEGIN}${words}${END}`;
}

/** Whether a page has words that were marked. @example hasEnglish("<p>Pas</p>") // false */
export function hasEnglish(html: string): boolean {
  return html.includes(BEGIN);
}

/**
 * A page whose marks have become elements with a language of their own.
 *
 * @param html whole page
 * @returns the page without a mark
 * @example showEnglish('<p title="\uE000a\uE001">\uE000b\uE001</p>') // '<p title="a"><span lang="en">b</span></p>'
 */
export function showEnglish(html: string): string {
  if (!hasEnglish(html)) return html;
  let [within, svgText] = ["", 0];
  return html
    .split(/(<[^>]*>)/)
    .map((part) => {
      if (part.startsWith("<")) {
        const [, slash = "", name = ""] = part.match(/^<(\/?)([a-z0-9-]+)/i) ?? [];
        if (TEXT_ALONE.has(name)) within = slash === "" && !part.endsWith("/>") ? name : "";
        if (name === "text") svgText += slash === "" ? 1 : -1;
        return bare(part);
      }
      if (within !== "") return bare(part);
      const element = svgText > 0 ? "tspan" : "span";
      return part.replaceAll(BEGIN, `<${element} lang="en">`).replaceAll(END, `</${element}>`);
    })
    .join("");
}

function bare(text: string): string {
  return text.replaceAll(BEGIN, "").replaceAll(END, "");
}
