/**
 * The damselfly's shapes, without colour. Smooth skin instead of hairs: each part has its outline, fine lines along its
 * right side where the light does not reach, and an edge where it ends. The abdomen is drawn a little stouter than life.
 */
/** Front, hind end, and half the width at both, of S1 to S10. */
export const SEGMENTS: readonly (readonly [from: number, to: number, front: number, hind: number])[] = [
  [-90, -80, 9, 9],
  [-80, -60, 9, 8],
  [-60, -27, 8, 7],
  [-27, 8, 7, 6.6],
  [8, 43, 6.6, 6.8],
  [43, 76, 6.8, 7.4],
  [76, 105, 7.4, 8.6],
  [105, 125, 8.6, 9.2],
  [125, 142, 9.2, 8.8],
  [142, 153, 8.8, 7.6],
];

function segment([from, to, front, hind]: (typeof SEGMENTS)[number], index: number): string {
  const line = (share: number) => `M${round(front * share)} ${from + 2.5}L${round(hind * share)} ${to - 1.5}`;
  const bulge = (to - from) / 5;
  return [
    `<g id="damselfly-S${index + 1}"><path d="M${-front} ${from}Q0 ${from + 1.6} ${front} ${from}`,
    `C${round(front + 0.9)} ${round(from + bulge)} ${round(hind + 0.9)} ${round(to - bulge)} ${hind} ${to}Q0 ${to + 2}-${hind} ${to}`,
    `C${round(-hind - 0.9)} ${round(to - bulge)} ${round(-front - 0.9)} ${round(from + bulge)}-${front} ${from}Z"/>`,
    `<path class="shade" d="${line(0.86)}${line(0.7)}${line(0.52)}"/><path class="shade broken" d="${line(0.36)}${line(0.22)}"/></g>`,
  ].join("");
}

function round(number: number): number {
  return Math.round(number * 10) / 10;
}

const THORAX =
  "M-8-138C-15-136-19-128-19-117C-19-103-15-93-9-90C-4-88 4-88 9-90C15-93 19-103 19-117C19-128 15-136 8-138C4-140-4-140-8-138Z";
const HEAD =
  "M-17-166C-12-171-6-173 0-173C6-173 12-171 17-166C20-162 19-155 14-152C6-149-6-149-14-152C-19-155-20-162-17-166Z";
const EYES =
  "M-17-171C-26-173-34-168-34-160C-34-152-27-147-20-149C-15-151-13-156-13-161C-13-166-14-170-17-171ZM17-171C26-173 34-168 34-160C34-152 27-147 20-149C15-151 13-156 13-161C13-166 14-170 17-171Z";

/** One wing, its root at 0, along the body: stalked base, the node, the coloured cell near the tip. */
const WING =
  '<path d="M-3 0C-6 18-9 32-17 56C-27 88-33 128-27 158C-24 171-14 176-7 168C3 154 6 112 5 78C4 50 3 22 3 0Z"/>' +
  '<path class="vein" d="M-1 2C-3 40-14 96-18 166M0 2C1 50-4 112-12 171M1 2C4 60 3 120-6 166M-12 46L4 44M-24 88L5 82M-29 122L3 116M-28 140L0 138M-20 62L4 62M-27 104L4 100M-30 132L2 127M-22 76C-12 92-14 130-22 164M-8 66C-2 96-2 132-7 160"/>' +
  '<path class="stigma" d="M-1 148L-4 159L-8 157L-4 146Z"/>';

/** Everything a page with damselflies needs in one hidden `<defs>`. */
export const DAMSELFLY_SHAPES = [
  ...SEGMENTS.map(segment),
  '<path id="damselfly-end" d="M-5 153C-7 159-6 165-3 166C-3 162-2 158-1 155M5 153C7 159 6 165 3 166C3 162 2 158 1 155"/>',
  `<g id="damselfly-mid-thorax"><path d="${THORAX}"/><path class="shade" d="M17-121C17-106 13-97 9-93M15-125C15-108 11-98 7-93M12.5-128C12.5-110 9-99 5-92"/><path class="shade" d="M0-139V-104"/></g>`,
  '<path id="damselfly-stripes" d="M-4.6-137C-8-124-7-106-4-92H4C7-106 8-124 4.6-137ZM-9-136C-14-124-13-106-8.5-93L-11-94C-16-101-18.5-112-18-122C-17-130-13-135-9-136ZM9-136C14-124 13-106 8.5-93L11-94C16-101 18.5-112 18-122C17-130 13-135 9-136Z"/>',
  '<g id="damselfly-collar"><path d="M-8-150C-13-148-13-141-9-137C-4-134 4-134 9-137C13-141 13-148 8-150C4-152-4-152-8-150Z"/><path class="shade" d="M11-146C10-141 8-138 5-136.500M8.5-148C8-142 6-138 3-136"/></g>',
  `<g id="damselfly-face"><path d="${HEAD}"/><path class="shade" d="M-9-161Q0-165 9-161M-11-156Q0-159 11-156"/></g>`,
  `<path id="damselfly-eyes" d="${EYES}"/>`,
  '<path id="damselfly-glint" d="M-30-164C-28-168-24-169-21-168M30-164C28-168 24-169 21-168"/>',
  '<path id="damselfly-antennae" d="M-6-172L-9-181M6-172L9-181"/>',
  `<g id="damselfly-wings"><g transform="translate(-13 -98) rotate(13)">${WING}</g><g transform="translate(-14 -116) rotate(21)">${WING}</g></g>`,
  '<g id="damselfly-legs"><path d="M-9-138L-22-150L-24-166M-15-128L-33-136L-44-152"/><path class="bristles" d="M-22-152l-4 1M-23-157l-4 1M-23-161l-4 0M-36-141l-4-1M-39-145l-4-1"/></g>',
  '<g id="damselfly-hind-leg"><path d="M13-105L15-109L33-97L31-92ZM31-97L34-95L41-63L39-62ZM39-63l2-1l2 9l-1 1Z"/><path class="bristles" d="M33-90l4-2M34-84l4-2M36-78l4-2M37-72l4-2"/></g>',
].join("");
