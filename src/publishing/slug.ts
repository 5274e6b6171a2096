/**
 * A part of an address made from a name: lower-case ASCII letters, figures and hyphens.
 *
 * @example slugOf("Bombus lucorum agg.") // => "bombus-lucorum-agg"
 */
export function slugOf(name: string): string {
  return name
    .normalize("NFD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-|-$/g, "");
}

/**
 * Slugs for a list of names, each its own: a repeated one gets a number.
 *
 * @example uniqueSlugs(["A b", "a-b"]) // => ["a-b", "a-b-2"]
 */
export function uniqueSlugs(names: readonly string[]): string[] {
  const taken = new Set<string>();
  return names.map((name) => {
    const base = slugOf(name) || "taxon";
    let slug = base;
    for (let number = 2; taken.has(slug); number += 1) slug = `${base}-${number}`;
    taken.add(slug);
    return slug;
  });
}
