/**
 * The bee's shapes, without colour: each part has its outline, a fringe (`pile-fringe`), rows of hairs (`pile-hairs`)
 * and a line where a segment ends (`pile-edge`). Classes of the using element colour them through inheritance.
 */
const ABDOMEN =
  "M0 17C-24 17-38 23-45 38C-53 57-52 78-42 98C-33 116-18 128 0 129C18 128 33 116 42 98C52 78 53 57 45 38C38 23 24 17 0 17Z";
const THORAX = "M0-56C22-56 37-46 41-26C44-6 40 12 28 20C18 27-18 27-28 20C-40 12-44-6-41-26C-37-46-22-56 0-56Z";
const HEAD = "M0-88C13-89 23-83 25-72C26-62 21-54 12-51C6-49-6-49-12-51C-21-54-26-62-25-72C-23-83-13-89 0-88Z";

/** Where the segments T1 to T6 begin and end along the middle line, front to back. */
const SEGMENT_ENDS = [8, 31, 54, 76, 95, 110, 136] as const;
const FRONT_OF_THORAX = -56;
/** Clips of the thorax: collar, mid-thorax, rear thorax. */
const BANDS = [
  ["collar", "M-60-70H60V-41Q0-27-60-41Z"],
  ["mid-thorax", "M-60-41Q0-27 60-41V6Q0 14-60 6Z"],
  ["rear-thorax", "M-60 6Q0 14 60 6V40H-60Z"],
] as const;

function outline(id: string): string {
  return `<use href="#${id}" class="pile-fringe"/><use href="#${id}"/>`;
}

function segment(index: number): string {
  const [from = 0, to = 0] = SEGMENT_ENDS.slice(index, index + 2);
  const name = `T${index + 1}`;
  const rows = to - from > 18 ? 3 : 2;
  const hairs = Array.from(
    { length: rows },
    (_, row) => `M-46 ${(from + 5 + (row * (to - from)) / rows).toFixed(1)}q46 13 92 0`,
  ).join("");
  const last = index === SEGMENT_ENDS.length - 2;
  return [
    `<clipPath id="bee-clip-${name}"><path d="M-60 ${from}Q0 ${from + 13} 60 ${from}V${to}Q0 ${to + 13}-60 ${to}Z"/></clipPath>`,
    `<g id="bee-${name}"><g clip-path="url(#bee-clip-${name})">${outline("bee-abdomen")}</g>`,
    `<g clip-path="url(#bee-clip-abdomen)"><path class="pile-hem" d="M-46 ${to + 1.4}Q0 ${to + 12.5} 46 ${to + 1.4}"/>`,
    last ? "" : `<path class="pile-edge" d="M-56 ${to}Q0 ${to + 13} 56 ${to}"/>`,
    `<path class="pile-hairs" clip-path="url(#bee-clip-${name})" d="${hairs}"/></g></g>`,
  ].join("");
}

/** Hairs of the thorax bend forwards in front and backwards behind. */
const THORAX_HAIRS = Array.from({ length: 9 }, (_, row) => {
  const y = FRONT_OF_THORAX + 11 + row * 8;
  return `M-44 ${y}Q0 ${(y - 5 + row * 2.6).toFixed(1)} 44 ${y}`;
}).join("");

const HIND_LEG =
  '<path d="M47 36C52 34 57 37 60 44C65 56 67 72 65 84C62 88 58 87 56 83C51 70 46 54 45 44C44 40 45 37 47 36Z"/><path class="pile-fringe thin" d="M57 38C63 48 68 68 65 84M46 40C46 52 51 70 57 84"/>';

/** Everything a page with bees needs in one hidden `<defs>`. */
export const BEE_SHAPES = [
  `<path id="bee-abdomen" d="${ABDOMEN}"/><path id="bee-thorax" d="${THORAX}"/><path id="bee-head-outline" d="${HEAD}"/>`,
  '<clipPath id="bee-clip-abdomen"><use href="#bee-abdomen"/></clipPath><clipPath id="bee-clip-thorax"><use href="#bee-thorax"/></clipPath>',
  ...[0, 1, 2, 3, 4, 5].map(segment),
  '<clipPath id="bee-mark-sides"><path d="M-27-9Q-20 60-25 140H25Q20 60 27-9Z"/></clipPath><clipPath id="bee-mark-broken"><path d="M-9-9Q-5 60-8 140H8Q5 60 9-9Z"/></clipPath>',
  `<path id="bee-thorax-hairs" clip-path="url(#bee-clip-thorax)" d="${THORAX_HAIRS}"/>`,
  ...BANDS.map(
    ([name, clip]) =>
      `<clipPath id="bee-clip-${name}"><path d="${clip}"/></clipPath><g id="bee-${name}" clip-path="url(#bee-clip-${name})">${outline("bee-thorax")}<use href="#bee-thorax-hairs" class="pile-hairs"/></g>`,
  ),
  `<g id="bee-head">${outline("bee-head-outline")}<path class="pile-hairs" d="M-18-64Q0-70 18-64M-15-57Q0-61 15-57"/></g>`,
  `<clipPath id="bee-clip-face"><path d="M-40-100H40V-72Q0-80-40-72Z"/></clipPath><g id="bee-face" clip-path="url(#bee-clip-face)">${outline("bee-head-outline")}<path class="pile-hairs" d="M-18-80Q0-87 18-80"/></g>`,
  '<path id="bee-eyes" d="M-19-81C-26-79-29-70-25-60C-22-57-19-60-18-66C-17-72-17-78-19-81ZM19-81C26-79 29-70 25-60C22-57 19-60 18-66C17-72 17-78 19-81Z"/>',
  '<g id="bee-wings" transform="scale(-1 1) rotate(62 39 -28)"><path d="M41-18C64-8 94-10 114-7C123-3 121 8 110 12C86 18 58 8 38-8Z"/><path d="M37-36C60-55 104-60 136-45C147-38 145-26 132-21C106-11 66-10 41-18Z"/><path class="vein" d="M39-30C66-45 100-50 128-39M40-21C66-25 90-30 106-46M64-25L69-42M87-30L93-47M106-46C117-40 121-33 118-28M104-45C109-36 107-27 101-18M80-28C84-24 84-18 80-13M42-13C62-3 88 0 110 1M76-2L72 9"/></g>',
  '<g id="bee-legs"><path d="M-26-46L-44-60L-52-80L-60-90M-60-90l-4-7M-38 0L-56 4L-72 20M-72 20l-6 12l-7 7M27 14L54 38M66 84l4 17l7 8"/><path class="thigh" d="M30 16L52 36"/></g>',
  `<g id="bee-hind-leg" transform="translate(5)">${HIND_LEG}</g><g id="bee-hind-leg-left" transform="scale(-1 1) translate(5)">${HIND_LEG}</g>`,
  '<path id="bee-antennae" d="M-8-84L-19-101C-22-105-30-112-36-121M8-84L19-101C22-105 30-112 36-121"/>',
  '<path id="bee-antennae-male" d="M-8-84L-17-98C-24-106-38-118-42-136M8-84L17-98C24-106 38-118 42-136"/>',
].join("");
