/** One page in one language. */
export interface Version {
  readonly tag: string;
  /** Address of the page on this host. */
  readonly path: string;
}

/**
 * The addresses of one page in every language of the atlas: the first language at the top, each other in its folder.
 *
 * @param pathname address of the page that is being rendered
 * @param tag its language
 * @param languages of the atlas: the first, and the further ones
 * @param top address prefix of the atlas
 * @returns the first language first; one version where there is one language. Of the page for what is not there, the
 *   home pages
 * @example versionsOf("/atlas/fr/species/", "fr", { first: "en-GB", languages: ["fr"] }, "/atlas/") // [{ tag: "en-GB", path: "/atlas/species/" }, { tag: "fr", path: "/atlas/fr/species/" }]
 */
export function versionsOf(
  pathname: string,
  tag: string,
  { first, languages }: { first: string; languages: readonly string[] },
  top: string = process.env["ATLAS_TOP"] ?? "/",
): Version[] {
  const own = tag === first ? top : `${top}${tag}/`;
  const inside = pathname.startsWith(own) ? pathname.slice(own.length) : "";
  const page = /^404\/?$/.test(inside) ? "" : inside;
  return [
    { tag: first, path: `${top}${page}` },
    ...languages.map((other) => ({ tag: other, path: `${top}${other}/${page}` })),
  ];
}

/**
 * Addresses of a page in every language, for search engines; the first language is also for readers of none of them.
 *
 * @param pathname address of the page that is being rendered
 * @param tag its language
 * @param atlas its languages, where it is published, and whether its records are invented
 * @param top address prefix of the atlas
 * @returns none of an atlas of one language, one that says no address, and one of invented records, which nobody is to find
 * @example alternates("/fr/", "fr", { language: "en", languages: ["fr"], address: "https://a.example/", invented: false }, "/")[1] // { hreflang: "fr", href: "https://a.example/fr/" }
 */
export function alternates(
  pathname: string,
  tag: string,
  {
    language,
    languages,
    address,
    invented,
  }: { language: string; languages: readonly string[]; address: string; invented: boolean },
  top: string = process.env["ATLAS_TOP"] ?? "/",
): { hreflang: string; href: string }[] {
  if (address === "" || invented || languages.length === 0) return [];
  const published = address.endsWith("/") ? address : `${address}/`;
  const links = versionsOf(pathname, tag, { first: language, languages }, top).map((version) => ({
    hreflang: version.tag,
    href: new URL(version.path.slice(top.length), published).href,
  }));
  return [...links, ...links.slice(0, 1).map(({ href }) => ({ hreflang: "x-default", href }))];
}
