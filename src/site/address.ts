/**
 * The address of a page or file of this site, whatever sub-path the site is served under.
 *
 * @param path address from the top of the site, without a leading slash; "" is the home page
 * @param base address prefix of the site, with or without its closing slash; the build's own by default
 * @returns the address to write in href or src
 * @example address("species/red-tailed/", "/atlas") // "/atlas/species/red-tailed/"
 */
export function address(path: string, base: string = import.meta.env.BASE_URL): string {
  return `${base.replace(/\/+$/, "")}/${path.replace(/^\/+/, "")}`;
}

/**
 * The address of a file that the pages of all languages share: a table, a tile, a picture.
 *
 * @param path from the top of the atlas, without a leading slash
 * @example sharedAddress("data/2025.1/taxa.csv") // "/data/2025.1/taxa.csv", on the French pages too
 */
export function sharedAddress(path: string): string {
  return address(path, process.env["ATLAS_TOP"] ?? import.meta.env.BASE_URL);
}

/**
 * The same text with every link and source put under the site's sub-path. A published text may stand on any page, so
 * its relative links count from the top of the site too. Links to other hosts and to places on the page stay, and
 * those that begin with a dot; those into `data/` and `media/` lead to what all languages share.
 *
 * @param html text the engine has made safe
 * @param base address prefix of the pages
 * @param top address prefix of the atlas, where that of the pages is a language's
 * @returns the text to set as HTML
 * @example rebase('<a href="/methods/">how</a>', "/atlas/") // '<a href="/atlas/methods/">how</a>'
 */
export function rebase(
  html: string,
  base: string = import.meta.env.BASE_URL,
  top: string = process.env["ATLAS_TOP"] ?? base,
): string {
  return html.replace(
    /\b(href|src)="(?![a-z][a-z0-9+.-]*:|\/\/|#|\.|")\/?(data\/|media\/)?/gi,
    (_, name: string, shared: string | undefined) =>
      `${name}="${shared === undefined ? address("", base) : address(shared, top)}`,
  );
}
