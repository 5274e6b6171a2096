import { element, type OpenMap } from "./map-session.ts";
import { hashOfPlace } from "./permalink.ts";

/** A link to the page of the 10 km square, with its whole list. */
export function linkPage({ panel, hectads, words, request }: OpenMap, code: string): void {
  const hectad = hectads.ids.has(code) ? code : code.slice(0, -1);
  const line = element(panel, ".zoom-page");
  line.hidden = !hectads.ids.has(hectad);
  const link = element<HTMLAnchorElement>(line, "a");
  link.href = `${request.base}squares/${hectad.toLowerCase()}/`;
  link.textContent = words.say("zoom.page", { square: hectad });
}

/** The address of what is seen; on the map's own page, the page's too. */
export function describeLink({ map, panel, request, slug, viewValue, hereCode: square }: OpenMap): void {
  const { lng: longitude, lat: latitude } = map.getCenter();
  const hash = hashOfPlace({
    taxon: slug,
    view: viewValue,
    zoom: map.getZoom(),
    longitude,
    latitude,
    ...(square === undefined ? {} : { square }),
  });
  element<HTMLAnchorElement>(panel, "[data-link]").href = `${request.base}map/${hash}`;
  if (request.ownPage) history.replaceState(null, "", hash);
}
