import type { BodyPlan, PlanRow, PlanShape } from "./body-plan.ts";
import { DAMSELFLY_SHAPES, SEGMENTS } from "./damselfly-shapes.ts";
import { MARKS } from "./part-state.ts";

/** Marks that a segment bears; stripes are of the thorax. */
const SEGMENT_MARKS = MARKS.filter((mark) => mark !== "stripes");

const ROWS: readonly PlanRow[] = [
  { id: "face", ring: [10, -162] },
  { id: "eyes", ring: [30, -158] },
  { id: "collar", ring: [10, -144] },
  { id: "mid-thorax", ring: [17, -120] },
  { id: "hind-leg", ring: [36, -84] },
  ...SEGMENTS.map(
    ([from, to, front, hind], index): PlanRow => ({
      id: `S${index + 1}`,
      ring: [Math.round((front + hind) / 2), Math.round((from + to) / 2)],
    }),
  ),
  { id: "wings" },
];

/** Each segment with its marks, stretched over it, from behind. */
const ABDOMEN: readonly PlanShape[] = SEGMENTS.map(([from, to, front, hind], index): PlanShape[] => {
  const [shape, row] = [`damselfly-S${index + 1}`, `S${index + 1}`];
  const transform = `translate(0 ${from}) scale(${round((front + hind) / 20)} ${round((to - from) / 20)})`;
  return [{ shape, row }, ...SEGMENT_MARKS.map((mark) => ({ shape: `mark-${mark}`, row, mark, transform }))];
})
  .reverse()
  .flat();

const BODY: readonly PlanShape[] = [
  { shape: "damselfly-end", className: "pile-bare" },
  ...ABDOMEN,
  { shape: "damselfly-mid-thorax", row: "mid-thorax" },
  { shape: "damselfly-stripes", row: "mid-thorax", mark: "stripes" },
  { shape: "damselfly-collar", row: "collar" },
  { shape: "damselfly-face", row: "face" },
  { shape: "damselfly-eyes", row: "eyes", className: "eyes" },
  { shape: "damselfly-glint", className: "glint" },
];

/** The damselfly from above, wings laid back on its left side: ten numbered segments, each with its mark. */
export const DAMSELFLY: BodyPlan = {
  id: "damselfly",
  view: "body.view.above",
  rows: ROWS,
  shapes: DAMSELFLY_SHAPES,
  marks: MARKS,
  figure: [
    { shape: "damselfly-wings", row: "wings" },
    { shape: "damselfly-legs", className: "limbs thin" },
    { shape: "damselfly-hind-leg", row: "hind-leg" },
    { shape: "damselfly-antennae", className: "limbs fine" },
    ...BODY,
  ],
  mini: BODY,
  height: 372,
  width: 116,
  axis: 62,
  zero: 0.505,
  miniBox: "-45 -178 90 350",
  segments: true,
};

function round(number: number): number {
  return Math.round(number * 1000) / 1000;
}
