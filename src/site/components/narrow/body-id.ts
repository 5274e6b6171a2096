/**
 * The id of the template of a small body: one word, as an id must be.
 *
 * @param caste empty for none
 * @param form empty for the usual one
 * @example bodyId("volucella-bombylans", "", "red tailed") // "body-volucella-bombylans--red_tailed"
 */
export function bodyId(slug: string, caste: string, form: string): string {
  return `body-${slug}-${caste}-${form}`.replaceAll(/\s/g, "_");
}
