/** Names of parts, states and castes in the language of the page. Runs in the build and in the browser. */
import type { Say } from "../../words/client.ts";

const PLAIN = /^[\w-]+$/;

/** The message of a key, or undefined where the catalogue has none. */
function known(key: string, says: Say): string | undefined {
  const said = says(key);
  return said === key ? undefined : said;
}

/**
 * The name of a part, with a small letter; a code such as T2 stays.
 *
 * @param part id as in `characters.csv`
 * @param says `saysBody` in the build, `pageWords()` in a script; topic `body.`
 * @example partName("hind-leg", saysBody) // "hind leg"
 */
export function partName(part: string, says: Say): string {
  if (/^[A-Z]\d+$/i.test(part)) return part.toUpperCase();
  return (PLAIN.test(part) ? known(`body.part.${part}`, says) : undefined) ?? part.replaceAll("-", " ");
}

/** The same as it heads a row. @example rowName("hind-leg", saysBody) // "Hind leg" */
export function rowName(part: string, says: Say): string {
  return partName(part, says).replace(/\p{L}/u, (letter) => letter.toLocaleUpperCase());
}

/**
 * A state in words: each colour and mark that the catalogue knows in the language of the page, anything else as the
 * scheme wrote it.
 *
 * @example stateName("yellow or black", saysBody) // "yellow or black"
 * @example stateName("3 equal to 5", saysBody) // "3 equal to 5"
 */
export function stateName(state: string, says: Say): string {
  const whole = wordName(state.replaceAll(" ", "-"), says);
  if (whole !== undefined) return whole;
  const [one = "", two] = state.split(" or ");
  if (two !== undefined) {
    const [first, second] = [wordName(one, says), wordName(two, says)];
    return first === undefined || second === undefined ? state : says("body.either", { one: first, two: second });
  }
  const [colour = "", mark, ...more] = state.split(" ");
  const ground = wordName(colour, says);
  if (mark === undefined) return state;
  const marked = PLAIN.test(mark) ? known(`body.mark.${mark}`, says) : undefined;
  return more.length > 0 || ground === undefined || marked === undefined
    ? state
    : says("body.marked", { colour: ground, mark: marked });
}

function wordName(word: string, says: Say): string | undefined {
  if (!PLAIN.test(word)) return undefined;
  return known(`body.state.${word}`, says) ?? known(`body.mark.${word}`, says);
}

/** The name of a mark alone. @example markName("stalked", saysBody) // "stalked" */
export function markName(mark: string, says: Say): string {
  return (PLAIN.test(mark) ? known(`body.mark.${mark}`, says) : undefined) ?? mark;
}

/** Ages: forms that a colour goes through, not colour forms that a bee is born with. */
const AGES = new Set(["fresh", "worn", "faded", "young", "immature", "mature", "old"]);

/** Whether a form is an age. @example isAge("worn") // true @example isAge("black") // false */
export function isAge(form: string): boolean {
  return AGES.has(form.toLowerCase());
}

/**
 * The name of an age or colour form.
 *
 * @example formName("worn", saysBody) // "worn"
 * @example formName("island", saysBody) // "island form"
 */
export function formName(form: string, says: Say): string {
  const name = PLAIN.test(form) ? known(`body.form.${form.toLowerCase()}`, says) : undefined;
  return name ?? says(isAge(form) ? "body.age" : "body.form", { form });
}
