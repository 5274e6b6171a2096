/**
 * Words on a page that are not of its language: messages a catalogue lacks, names and texts a scheme has in its first
 * language only. They are said between marks, which no text of a scheme holds, and when the page is whole the marks
 * become elements with a `lang`, or nothing where no element may stand.
 */
const [BEGIN, OF, END] = ["\uE000", "\uE002", "\uE001"] as const;
const BEGINNING = new RegExp(`${BEGIN}([A-Za-z0-9-]+)${OF}`, "g");
/** Elements that hold text alone. */
const TEXT_ALONE = new Set(["title", "desc", "option", "script", "style", "textarea"]);
/** What stands in a block of its own, and how far to look for it. */
const BLOCK = /^\s*<(?:p|ul|ol|dl|div|h[1-6]|table|figure|section)\b/;
const BLOCK_LOOK = 20;
/** A tag with its attributes, whose values may hold a closing bracket; or a mark. Every page is read by it. */
const TAGS_AND_MARKS = new RegExp(
  `<(/?)([A-Za-z0-9-]+)(?:[^>"']+|"[^"]*"|'[^']*')*>|${BEGIN}([A-Za-z0-9-]+)${OF}|${END}`,
  "g",
);

/**
 * Marks words as those of another language than the page's.
 *
 * @param tag BCP 47 tag of the words
 * @returns the words between marks; nothing marked where there are no words
 * @example markLanguage("Heath bumblebee", "en-GB") // "\uE000en-GB\uE002Heath bumblebee\uE001"
 */
export function markLanguage(words: string, tag: string): string {
  return words === "" ? "" : `${BEGIN}${tag}${OF}${words}${END}`;
}

/** Marks words as English. @example markEnglish("Season") // "\uE000en\uE002Season\uE001" */
export function markEnglish(words: string): string {
  return markLanguage(words, "en");
}

const ENGLISH_WITHIN = new RegExp(`${BEGIN}en${OF}([^${BEGIN}${END}]*)${END}`, "g");

/** The same for an English sentence whose parts may be marked already. @example markEnglishWhole(`In ${markEnglish("May")}`) // markEnglish("In May") */
export function markEnglishWhole(words: string): string {
  return markEnglish(hasMarks(words) ? words.replace(ENGLISH_WITHIN, "$1") : words);
}

/** Whether a text has words that were marked. @example hasMarks("<p>Pas</p>") // false */
export function hasMarks(text: string): boolean {
  return text.includes(BEGIN);
}

/**
 * The words alone, for sorting, comparing and measuring.
 *
 * @example withoutMarks(markEnglish("Season")) // "Season"
 */
export function withoutMarks(text: string): string {
  return hasMarks(text) ? text.replace(BEGINNING, "").replaceAll(END, "") : text;
}

/**
 * A page whose marks have become elements with a language of their own.
 *
 * @param html whole page
 * @returns the page without a mark
 * @example showMarks(`<p title="${markEnglish("a")}">${markEnglish("b")}</p>`) // '<p title="a"><span lang="en">b</span></p>'
 */
export function showMarks(html: string): string {
  if (!hasMarks(html)) return html;
  let [within, svgText] = ["", 0];
  const open: string[] = [];
  const shown = (part: string, slash: string, name?: string, language?: string, at = 0): string => {
    if (name !== undefined) {
      if (TEXT_ALONE.has(name)) within = slash === "" && !part.endsWith("/>") ? name : "";
      if (name === "text") svgText += slash === "" ? 1 : -1;
      return withoutMarks(part);
    }
    if (within !== "") return "";
    if (language === undefined) return `</${open.pop() ?? "span"}>`;
    const isBlock = BLOCK.test(html.slice(at + part.length, at + part.length + BLOCK_LOOK));
    open.push(svgText > 0 ? "tspan" : isBlock ? "div" : "span");
    return `<${open.at(-1)} lang="${language}">`;
  };
  return html.replace(TAGS_AND_MARKS, shown);
}

const MARKED_ITEM = new RegExp(`^(${BEGIN}[A-Za-z0-9-]+${OF})<li>([\\s\\S]*)</li>${END}$`);

/**
 * An item of a list with the marks within it, where they stood round it: nothing but items may stand in a list.
 *
 * @example marksInItem(markEnglish("<li>a</li>")) // `<li>${markEnglish("a")}</li>`
 */
export function marksInItem(html: string): string {
  return html.replace(MARKED_ITEM, `<li>$1$2${END}</li>`);
}

/** Length of the marks a text begins with, for what is done to its first letter. @example marksBefore("Season") // 0 */
export function marksBefore(text: string): number {
  return text.startsWith(BEGIN) ? (text.match(/^(?:\uE000[A-Za-z0-9-]+\uE002)+/)?.[0].length ?? 0) : 0;
}
