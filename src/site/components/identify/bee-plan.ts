import { BEE_SHAPES } from "./bee-shapes.ts";
import type { BodyPlan, PlanRow, PlanShape } from "./body-plan.ts";

const ROWS: readonly PlanRow[] = [
  { id: "antennae", ring: [31, -113] },
  { id: "face", ring: [12, -84] },
  { id: "eyes", ring: [23, -68] },
  { id: "collar", ring: [33, -42] },
  { id: "mid-thorax", ring: [40, -14] },
  { id: "rear-thorax", ring: [30, 14] },
  { id: "T1", ring: [38, 30] },
  { id: "T2", ring: [46, 48] },
  { id: "T3", ring: [47, 70] },
  { id: "T4", ring: [44, 90] },
  { id: "T5", ring: [33, 108] },
  { id: "T6", ring: [15, 122] },
  { id: "hind-leg", ring: [64, 66] },
  { id: "wings" },
];

/** Segments from behind, each with its marks over it. */
const ABDOMEN: readonly PlanShape[] = ["T6", "T5", "T4", "T3", "T2", "T1"].flatMap((id) => [
  { shape: `bee-${id}`, row: id },
  ...(["sides", "broken"] as const).map((mark) => ({ shape: `bee-${id}`, row: id, mark, clip: `bee-mark-${mark}` })),
]);

const BODY: readonly PlanShape[] = [
  ...ABDOMEN,
  { shape: "bee-rear-thorax", row: "rear-thorax" },
  { shape: "bee-mid-thorax", row: "mid-thorax" },
  { shape: "bee-collar", row: "collar" },
  { shape: "bee-head", row: "face", className: "head" },
  { shape: "bee-face", row: "face" },
  { shape: "bee-eyes", className: "eye" },
];

/** The bee from above: wings and the rest of the legs on its left side only, so that its right is free for leaders. */
export const BEE: BodyPlan = {
  id: "bee",
  view: "body.view.above",
  rows: ROWS,
  shapes: BEE_SHAPES,
  marks: ["sides", "broken"],
  figure: [
    { shape: "bee-wings", row: "wings" },
    { shape: "bee-legs", className: "limbs" },
    { shape: "bee-hind-leg", row: "hind-leg" },
    { shape: "bee-antennae", className: "limbs", exceptCastes: ["male"] },
    { shape: "bee-antennae-male", className: "limbs", castes: ["male"] },
    ...BODY,
  ],
  mini: [{ shape: "bee-hind-leg", row: "hind-leg" }, { shape: "bee-hind-leg-left", row: "hind-leg" }, ...BODY],
  height: 374,
  width: 146,
  axis: 76,
  zero: 0.49,
  miniBox: "-72 -94 144 228",
  segments: false,
};
