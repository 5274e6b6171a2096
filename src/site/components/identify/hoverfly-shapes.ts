/**
 * The hoverfly's shapes, without colour, in the same engraving as the bee's: outline, fringe, rows of hairs, edges of
 * segments. What tells a fly stands out: eyes that fill the head, stubs for antennae, one pair of wings.
 */
const ABDOMEN =
  "M0 19C-21 19-36 26-42 41C-49 61-48 85-38 103C-29 117-15 124 0 124C15 124 29 117 38 103C48 85 49 61 42 41C36 26 21 19 0 19Z";
const THORAX =
  "M0-54C19-54 33-49 39-35C44-21 43-4 37 7C30 17 14 20 0 20C-14 20-30 17-37 7C-43-4-44-21-39-35C-33-49-19-54 0-54Z";
const SCUTELLUM = "M-24 11C-22 26-11 33 0 33C11 33 22 26 24 11C12 17-12 17-24 11Z";
const HEAD = "M0-87C15-88 27-83 31-73C34-63 28-54 17-52C6-50-6-50-17-52C-28-54-34-63-31-73C-27-83-15-88 0-87Z";
const FACE = "M-12-80C-13-90-7-97 0-97C7-97 13-90 12-80C7-75-7-75-12-80Z";
/** Eyes that meet, and eyes with a strip between them: the right one; the left is its mirror. */
const EYES = [
  ["eyes", "M.6-78C12-86 25-84 30-73C33-63 27-55 17-53C10-51 4-52 .6-55Z"],
  ["eyes-apart", "M7-81C15-86 26-83 30-73C33-63 27-55 17-53C12-52 8-53 6-55Z"],
] as const;

/** Where the segments T1 to T5 begin and end along the middle line, front to back. */
const SEGMENT_ENDS = [16, 31, 60, 86, 108, 132] as const;

const BANDS = [
  ["collar", "M-60-70H60V-40Q0-30-60-40Z"],
  ["mid-thorax", "M-60-40Q0-30 60-40V30H-60Z"],
] as const;

function outline(id: string): string {
  return `<use href="#${id}" class="pile-fringe"/><use href="#${id}"/>`;
}

function segment(index: number): string {
  const [from = 0, to = 0] = SEGMENT_ENDS.slice(index, index + 2);
  const name = `T${index + 1}`;
  const rows = to - from > 22 ? 3 : 2;
  const hairs = Array.from(
    { length: rows },
    (_, row) => `M-47 ${(from + 5 + (row * (to - from)) / rows).toFixed(1)}q47 9 94 0`,
  ).join("");
  const last = index === SEGMENT_ENDS.length - 2;
  return [
    `<clipPath id="hoverfly-clip-${name}"><path d="M-60 ${from}Q0 ${from + 9} 60 ${from}V${to}Q0 ${to + 9}-60 ${to}Z"/></clipPath>`,
    `<g id="hoverfly-${name}"><g clip-path="url(#hoverfly-clip-${name})">${outline("hoverfly-abdomen")}</g>`,
    `<g clip-path="url(#hoverfly-clip-abdomen)">`,
    last ? "" : `<path class="pile-edge" d="M-56 ${to}Q0 ${to + 9} 56 ${to}"/>`,
    `<path class="pile-hairs" clip-path="url(#hoverfly-clip-${name})" d="${hairs}"/></g></g>`,
  ].join("");
}

const THORAX_HAIRS = Array.from({ length: 8 }, (_, row) => {
  const y = -45 + row * 8;
  return `M-44 ${y}Q0 ${(y - 5 + row * 2.4).toFixed(1)} 44 ${y}`;
}).join("");

/** The right wing, turned over to the left: long leading edge, the loop of veins before the tip, the lobe at its base. */
const WING =
  '<path d="M37-30C60-43 102-51 132-45C148-41 152-32 144-24C128-9 94 0 68-1C60-1 57-4 51-6C47 0 40-2 39-9C37-14 35-20 37-30Z"/>' +
  '<path class="vein" d="M40-29C72-41 112-46 143-37M41-27C72-37 104-41 126-37C135-35 141-33 147-33M42-24C74-30 100-33 122-31C131-30 135-35 136-40M58-25C84-27 104-27 120-24M42-20C70-20 96-19 117-18C126-18 130-24 131-31M45-15C70-9 88-8 106-7M82-33L84-20M104-32L108-18M62-21L64-11M51-6C53-12 49-16 44-18"/>';

const HIND_LEG =
  '<path d="M36 30L41 27L58 47L54 52ZM53 47C57 44 60 46 61 50L69 83C69 87 65 88 63 85L53 51Z"/><path class="pile-fringe thin" d="M61 50L68 82M54 53L62 84"/><path class="tarsus" d="M67 86l4 12l1 9l6 6"/>';

/** Everything a page with hoverflies needs in one hidden `<defs>`. */
export const HOVERFLY_SHAPES = [
  `<path id="hoverfly-abdomen" d="${ABDOMEN}"/><path id="hoverfly-thorax" d="${THORAX}"/><path id="hoverfly-scutellum" d="${SCUTELLUM}"/><path id="hoverfly-head-outline" d="${HEAD}"/><path id="hoverfly-face-outline" d="${FACE}"/>`,
  '<clipPath id="hoverfly-clip-abdomen"><use href="#hoverfly-abdomen"/></clipPath><clipPath id="hoverfly-clip-thorax"><use href="#hoverfly-thorax"/></clipPath>',
  ...[0, 1, 2, 3, 4].map(segment),
  '<clipPath id="hoverfly-mark-sides"><path d="M-13 0Q-9 60-12 140H12Q9 60 13 0Z"/></clipPath><clipPath id="hoverfly-mark-broken"><path d="M-5 0Q-3 60-5 140H5Q3 60 5 0Z"/></clipPath>',
  `<path id="hoverfly-thorax-hairs" clip-path="url(#hoverfly-clip-thorax)" d="${THORAX_HAIRS}"/>`,
  ...BANDS.map(
    ([name, clip]) =>
      `<clipPath id="hoverfly-clip-${name}"><path d="${clip}"/></clipPath><g id="hoverfly-${name}" clip-path="url(#hoverfly-clip-${name})">${outline("hoverfly-thorax")}<use href="#hoverfly-thorax-hairs" class="pile-hairs"/></g>`,
  ),
  '<path id="hoverfly-suture" class="pile-edge" d="M-41-14C-30-20-24-13-18-11M41-14C30-20 24-13 18-11"/>',
  `<g id="hoverfly-rear-thorax">${outline("hoverfly-scutellum")}<path class="pile-hairs" d="M-18 19Q0 27 18 19"/></g>`,
  `<g id="hoverfly-face">${outline("hoverfly-face-outline")}<path class="pile-hairs" d="M-8-88Q0-92 8-88"/></g>`,
  `<g id="hoverfly-head">${outline("hoverfly-head-outline")}</g>`,
  ...EYES.map(
    ([name, path]) =>
      `<g id="hoverfly-${name}"><path id="hoverfly-${name}-right" d="${path}"/><use href="#hoverfly-${name}-right" transform="scale(-1 1)"/></g>`,
  ),
  '<path id="hoverfly-glint" class="glint" d="M12-79C19-79 25-76 27-70M-12-79C-19-79-25-76-27-70"/>',
  '<g id="hoverfly-antennae"><path d="M-4-96C-6-99-8-103-7-107C-4-108-2-103-2-97ZM4-96C6-99 8-103 7-107C4-108 2-103 2-97Z"/><path class="arista" d="M-7-103l-8-7M-10-106l-1-4M-10-106l-4 1M7-103l8-7M10-106l1-4M10-106l4 1"/></g>',
  `<g id="hoverfly-wings" transform="scale(-1 1) rotate(38 38 -20)">${WING}</g>`,
  '<g id="hoverfly-halter"><path d="M-39 5L-47 12"/><circle cx="-49" cy="14" r="3.6"/></g>',
  '<g id="hoverfly-legs"><path d="M-24-48L-42-62L-48-80L-57-90M-57-90l-3-6M-40-4L-60 4L-76 26M-76 26l-5 12l-7 6"/></g>',
  `<g id="hoverfly-hind-leg">${HIND_LEG}</g>`,
].join("");
