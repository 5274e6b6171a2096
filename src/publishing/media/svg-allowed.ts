/** What a drawing may hold. Whatever is not on these lists is left out: scripts, links, pictures in pictures, foreign elements. */
export const ELEMENTS: ReadonlySet<string> = new Set(
  "svg g defs symbol use title desc path circle ellipse rect line polyline polygon text tspan clipPath mask pattern marker linearGradient radialGradient stop style".split(
    " ",
  ),
);

export const ATTRIBUTES: ReadonlySet<string> = new Set(
  [
    "xmlns viewBox preserveAspectRatio width height x y x1 y1 x2 y2 cx cy r rx ry fx fy d points transform href xlink:href xmlns:xlink",
    "id class fill fill-opacity fill-rule stroke stroke-width stroke-linecap stroke-linejoin stroke-dasharray stroke-dashoffset stroke-opacity stroke-miterlimit",
    "opacity clip-path clip-rule mask color display visibility overflow vector-effect paint-order",
    "font-family font-size font-style font-weight text-anchor dominant-baseline letter-spacing dx dy rotate textLength",
    "offset stop-color stop-opacity gradientUnits gradientTransform spreadMethod clipPathUnits maskUnits maskContentUnits patternUnits patternContentUnits patternTransform",
    "markerWidth markerHeight markerUnits refX refY orient marker-start marker-mid marker-end xml:space lang role aria-hidden",
  ]
    .join(" ")
    .split(" "),
);

/** What fetches in CSS, of which attributes that colour are: the functions, and the sign that can write them otherwise. */
const FETCHES = /(?:url|src|image|image-set|cross-fade|element)\s*\(|\\/i;

/**
 * Whether a value leads to nothing outside the drawing: references are to its own ids.
 *
 * @example isOwnReference("href", "#leg") // true
 * @example isOwnReference("fill", "url(https://example.org/a)") // false
 */
export function isOwnReference(name: string, value: string): boolean {
  if (name === "href" || name === "xlink:href") return /^#[\w-]+$/.test(value);
  if (name === "xmlns") return value === "http://www.w3.org/2000/svg";
  if (name === "xmlns:xlink") return value === "http://www.w3.org/1999/xlink";
  return !FETCHES.test(value) || /^url\(#[\w-]+\)$/.test(value.trim());
}

/**
 * Whether a style sheet only colours: it fetches nothing, escapes nothing and runs nothing.
 *
 * @example isHarmlessStyle(".ink{stroke:#000}@media (prefers-color-scheme:dark){.ink{stroke:#fff}}") // true
 * @example isHarmlessStyle("@import 'a.css'") // false
 */
export function isHarmlessStyle(css: string): boolean {
  return !FETCHES.test(css) && !/@import|@font-face|@namespace|image-set|expression|javascript|[<>]/i.test(css);
}
