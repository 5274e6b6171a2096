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
 * The same text with every link and source put under the site's sub-path. A published text may stand on any page, so
 * its relative links count from the top of the site too. Links to other hosts and to places on the page stay, and
 * those that begin with a dot.
 *
 * @param html text the engine has made safe
 * @param base address prefix of the site
 * @returns the text to set as HTML
 * @example rebase('<a href="/methods/">how</a>', "/atlas/") // '<a href="/atlas/methods/">how</a>'
 */
export function rebase(html: string, base: string = import.meta.env.BASE_URL): string {
  return html.replace(
    /\b(href|src)="(?![a-z][a-z0-9+.-]*:|\/\/|#|\.|")\/?/gi,
    (_, name: string) => `${name}="${address("", base)}`,
  );
}
