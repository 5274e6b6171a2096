import type { Key } from "../../words/catalogue.ts";
import { ENGLISH } from "../../words/catalogue.ts";
import type { Say } from "../../words/client.ts";
import { say } from "../../words/say.ts";

/**
 * Says a message of the build by a key that is put together from a part or state; a key without a message says itself,
 * as the words of a page's script do.
 *
 * @example saysBody("body.part.hind-leg") // "hind leg"
 * @example saysBody("body.part.halter") // "body.part.halter"
 */
export const saysBody: Say = (key, values) => (Object.hasOwn(ENGLISH, key) ? say(key as Key, values) : key);
