import type { Tags } from "../../words/message.ts";

/**
 * What becomes of the tags of a message: a link, words for readers who do not see where it stands, bold words.
 *
 * @param href of the link
 * @example tagsFor("/methods/").a?.("how") // '<a href="/methods/">how</a>'
 */
export function tagsFor(href: string): Tags {
  return {
    a: (text) => `<a href="${href}">${text}</a>`,
    u: (text) => `<span class="unseen">${text}</span>`,
    b: (text) => `<b>${text}</b>`,
  };
}
