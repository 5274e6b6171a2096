import type { BodyPlan, PlanRow, PlanShape } from "./body-plan.ts";
import { HOVERFLY_SHAPES } from "./hoverfly-shapes.ts";

const ROWS: readonly PlanRow[] = [
  { id: "antennae", ring: [6, -104] },
  { id: "face", ring: [10, -87] },
  { id: "eyes", ring: [28, -68] },
  { id: "collar", ring: [33, -44] },
  { id: "mid-thorax", ring: [41, -14] },
  { id: "rear-thorax", ring: [19, 20] },
  { id: "T1", ring: [37, 30] },
  { id: "T2", ring: [45, 52] },
  { id: "T3", ring: [46, 76] },
  { id: "T4", ring: [38, 101] },
  { id: "T5", ring: [20, 119] },
  { id: "hind-leg", ring: [71, 99] },
  { id: "wings" },
];

const ABDOMEN: readonly PlanShape[] = ["T5", "T4", "T3", "T2", "T1"].flatMap((id) => [
  { shape: `hoverfly-${id}`, row: id },
  ...(["sides", "broken"] as const).map((mark) => ({
    shape: `hoverfly-${id}`,
    row: id,
    mark,
    clip: `hoverfly-mark-${mark}`,
  })),
]);

const BODY: readonly PlanShape[] = [
  ...ABDOMEN,
  { shape: "hoverfly-mid-thorax", row: "mid-thorax" },
  { shape: "hoverfly-suture", row: "mid-thorax" },
  { shape: "hoverfly-collar", row: "collar" },
  { shape: "hoverfly-rear-thorax", row: "rear-thorax" },
  { shape: "hoverfly-face", row: "face" },
  { shape: "hoverfly-head", className: "pile-bare" },
  { shape: "hoverfly-eyes", row: "eyes", className: "eyes", states: ["", "meeting"] },
  { shape: "hoverfly-eyes-apart", row: "eyes", className: "eyes", states: ["apart"] },
  { shape: "hoverfly-glint", className: "glint" },
];

/** The hoverfly from above, for look-alikes of bees: wings and most legs on its left side only. */
export const HOVERFLY: BodyPlan = {
  id: "hoverfly",
  view: "body.view.above",
  rows: ROWS,
  shapes: HOVERFLY_SHAPES,
  marks: ["sides", "broken"],
  figure: [
    { shape: "hoverfly-halter", className: "halter" },
    { shape: "hoverfly-wings", row: "wings" },
    { shape: "hoverfly-legs", className: "limbs thin" },
    { shape: "hoverfly-hind-leg", row: "hind-leg" },
    { shape: "hoverfly-antennae", className: "stub" },
    ...BODY,
  ],
  mini: [{ shape: "hoverfly-antennae", className: "stub" }, ...BODY],
  height: 374,
  width: 146,
  axis: 76,
  zero: 0.49,
  miniBox: "-72 -110 144 244",
  segments: false,
};
