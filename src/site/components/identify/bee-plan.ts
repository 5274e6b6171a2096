import { BEE_SHAPES } from "./bee-shapes.ts";
import type { BodyPlan, PlanRow } from "./body-plan.ts";

const ROWS: readonly PlanRow[] = [
  { id: "face", label: "Face", ring: [12, -84] },
  { id: "collar", label: "Collar", ring: [33, -42] },
  { id: "mid-thorax", label: "Mid-thorax", ring: [40, -14] },
  { id: "rear-thorax", label: "Rear thorax", ring: [30, 14] },
  { id: "T1", label: "T1", ring: [38, 30] },
  { id: "T2", label: "T2", ring: [46, 48] },
  { id: "T3", label: "T3", ring: [47, 70] },
  { id: "T4", label: "T4", ring: [44, 90] },
  { id: "T5", label: "T5", ring: [33, 108] },
  { id: "T6", label: "T6", ring: [15, 122] },
  { id: "hind-leg", label: "Hind leg", ring: [64, 66] },
  { id: "wings", label: "Wings" },
];

const BODY = [
  ...["T6", "T5", "T4", "T3", "T2", "T1"].map((id) => ({ shape: `bee-${id}`, row: id })),
  { shape: "bee-rear-thorax", row: "rear-thorax" },
  { shape: "bee-mid-thorax", row: "mid-thorax" },
  { shape: "bee-collar", row: "collar" },
  { shape: "bee-head", row: "face", className: "head" },
  { shape: "bee-face", row: "face" },
  { shape: "bee-eyes", className: "eye" },
] as const;

/** The bee from above: wings and the rest of the legs on its left side only, so that its right is free for leaders. */
export const BEE: BodyPlan = {
  id: "bee",
  view: "seen from above",
  rows: ROWS,
  shapes: BEE_SHAPES,
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
  miniBox: "-72 -94 144 228",
};
