/**
 * French messages with no-break spaces where French sets them, so that catalogues can be typed with a plain space.
 *
 * @param messages of the French catalogue
 * @returns the same keys; before `: ; ? ! % »` and after `«` the space cannot break
 * @example frenchSpaces({ a: "Une erreur ?" }) // { a: "Une erreur\u00a0?" }
 */
export function frenchSpaces<Messages extends Readonly<Record<string, string>>>(messages: Messages): Messages {
  const spaced = Object.entries(messages).map(([key, message]) => [
    key,
    message.replace(/ (?=[:;?!%»])/g, "\u00a0").replaceAll("« ", "«\u00a0"),
  ]);
  return Object.fromEntries(spaced) as Messages;
}
