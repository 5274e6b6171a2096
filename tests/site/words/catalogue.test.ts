import { IntlMessageFormat } from "intl-messageformat";
import { describe, expect, it } from "vitest";
import { CATALOGUES, ENGLISH, type Key } from "../../../src/site/words/catalogue.ts";
import { formatMessage } from "../../../src/site/words/message.ts";

const KEYS = Object.keys(ENGLISH) as Key[];
type Parts = ReturnType<IntlMessageFormat["getAst"]>;
/** Names in braces and in angle brackets, each once, as the library reads the message. */
const namesIn = (message: string) => [...new Set(namesOf(new IntlMessageFormat(message, "en").getAst()))].sort();
const namesOf = (parts: Parts): string[] =>
  parts.flatMap((part) => [
    ...("value" in part && part.type !== 0 ? [part.value] : []),
    ...("options" in part ? Object.values(part.options).flatMap(({ value }) => namesOf(value)) : []),
    ...("children" in part ? namesOf(part.children) : []),
  ]);

describe("catalogues of words", () => {
  it("are complete in English and French", () => {
    for (const tag of ["en", "fr"])
      expect(
        KEYS.filter((key) => !CATALOGUES[tag]?.[key]),
        tag,
      ).toEqual([]);
  });
  it("hold no message that English lacks", () => {
    for (const [tag, messages] of Object.entries(CATALOGUES))
      expect(
        Object.keys(messages).filter((key) => !(key in ENGLISH)),
        tag,
      ).toEqual([]);
  });
  it("hold messages that can be formatted, with the names of the English message alone", () => {
    for (const [tag, messages] of Object.entries(CATALOGUES))
      for (const [key, message] of Object.entries(messages)) {
        const names = namesIn(ENGLISH[key as Key]);
        expect(
          namesIn(message).filter((name) => !names.includes(name)),
          `${tag} ${key}`,
        ).toEqual([]);
        const values = Object.fromEntries(names.map((name) => [name, 2]));
        const tags = Object.fromEntries(
          names.filter((name) => message.includes(`<${name}>`)).map((name) => [name, (text: string) => text]),
        );
        const tagged = /<[a-z]/.test(message);
        expect(formatMessage(message, tag, values, tagged ? tags : undefined).length, `${tag} ${key}`).toBeGreaterThan(
          0,
        );
      }
  });
});
