const defined = new WeakMap<Request, Set<string>>();

/**
 * True the first time a page asks for a definition: the first map of a page defines the shared coast, the others refer to it.
 *
 * @param request of the page being rendered; one a page
 * @param name of the definition
 * @example definesFirst(Astro.request, "full") // true, then false
 */
export function definesFirst(request: Request, name: string): boolean {
  const names = defined.get(request) ?? new Set<string>();
  defined.set(request, names);
  if (names.has(name)) return false;
  names.add(name);
  return true;
}
