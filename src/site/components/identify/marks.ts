import type { Mark } from "./part-state.ts";

/**
 * Dark marks in a box of 20 by 20: from −10 to 10 across, from 0 at the front of a segment to 20 at its hind end. The
 * same shape stands in a cell and, stretched, on the segment of a long body.
 */
const SHAPES: Readonly<Record<Mark, string>> = {
  sides: "M-5.5 0Q-4.5 10-5.5 20H5.5Q4.5 10 5.5 0Z",
  broken: "M-2.4 0Q-1.4 10-2.4 20H2.4Q1.4 10 2.4 0Z",
  spots:
    "M-10 0H10V20H-10ZM-8 10C-8 14-7 16-5 16C-3 16-2 14-2 10C-2 6-3 4-5 4C-7 4-8 6-8 10ZM2 10C2 14 3 16 5 16C7 16 8 14 8 10C8 6 7 4 5 4C3 4 2 6 2 10Z",
  stripes: "M-10 0H-7.6V20H-10ZM-4.6 0Q-4 10-4.6 20H4.6Q4 10 4.6 0ZM7.6 0H10V20H7.6Z",
  band: "M-10 6Q0 8 10 6V14Q0 16-10 14Z",
  ring: "M-10 15.5Q0 17 10 15.5V20H-10Z",
  half: "M-10 10C-6 9-4 5 0 5C4 5 6 9 10 10V20H-10Z",
  tip: "M-10 0H10V12.5Q0 14.5-10 12.5Z",
  stalked: "M-7 8.5C-7 3.5 7 3.5 7 8.5C7 11.5 3 11 1.7 11.8V20H-1.7V11.8C-3 11-7 11.5-7 8.5Z",
  cup: "M-7.5 4H-4.2V11C-4.2 14.5 4.2 14.5 4.2 11V4H7.5V12C7.5 19.5-7.5 19.5-7.5 12Z",
  arrow: "M0 2L6.5 11L2 10V20H-2V10L-6.5 11Z",
};

/**
 * Marks as SVG shapes, with the ids `mark-…`, and the box they stand in with the id `mark-box`.
 *
 * @example markShapes(["ring"]).includes('id="mark-ring"') // true
 */
export function markShapes(marks: readonly Mark[]): string {
  if (marks.length === 0) return "";
  const shapes = marks.map((mark) => `<path id="mark-${mark}" fill-rule="evenodd" d="${SHAPES[mark]}"/>`);
  return `<path id="mark-box" d="M-10 0Q0 2 10 0V20Q0 22-10 20Z"/>${shapes.join("")}`;
}
