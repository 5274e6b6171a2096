/** Licences a scheme can publish under, by SPDX identifier, with name and address of the legal code. */
const LICENCES: Readonly<Record<string, { title: string; url: string }>> = Object.freeze({
  "CC0-1.0": { title: "Creative Commons Zero 1.0", url: "https://creativecommons.org/publicdomain/zero/1.0/legalcode" },
  "CC-BY-4.0": {
    title: "Creative Commons Attribution 4.0",
    url: "https://creativecommons.org/licenses/by/4.0/legalcode",
  },
  "CC-BY-SA-4.0": {
    title: "Creative Commons Attribution-ShareAlike 4.0",
    url: "https://creativecommons.org/licenses/by-sa/4.0/legalcode",
  },
  "CC-BY-NC-4.0": {
    title: "Creative Commons Attribution-NonCommercial 4.0",
    url: "https://creativecommons.org/licenses/by-nc/4.0/legalcode",
  },
  "OGL-UK-3.0": {
    title: "Open Government Licence 3.0",
    url: "https://www.nationalarchives.gov.uk/doc/open-government-licence/version/3/",
  },
});

/**
 * Name and address of a licence; one that is not known here keeps its identifier as title.
 *
 * @example licenceOf("CC-BY-4.0").title // => "Creative Commons Attribution 4.0"
 */
export function licenceOf(id: string): { id: string; title: string; url: string } {
  const known = LICENCES[id];
  return known === undefined ? { id, title: id, url: "" } : { id, ...known };
}
