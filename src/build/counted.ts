/**
 * A number with its noun, in English, thousands set off by commas.
 *
 * @param count a whole number, not negative
 * @param one the noun in the singular
 * @param many the noun in the plural, by default the singular with an s
 * @returns text without a line break
 * @example counted(120412, "record") // "120,412 records"
 * @example counted(1, "species", "species") // "1 species"
 */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString("en-GB")} ${count === 1 ? one : many}`;
}
