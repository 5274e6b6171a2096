import { type Box, type Frame, overlap } from "./frame.ts";

/** Corner of the frame an inset stands in. */
export type Corner = "south-east" | "south-west" | "north-east" | "north-west";

/** What is to be moved into a corner: its box where it truly lies, in units of the frame. */
export interface InsetRequest {
  readonly territory: string;
  readonly corner: Corner;
  readonly box: Box;
}

/** An inset in place: its frame line, and by how much its contents move. */
export interface Inset {
  readonly territory: string;
  readonly box: Box;
  readonly dx: number;
  readonly dy: number;
}

const PADDING = 6;
const FROM_SIDE = 8;
const FROM_END = 2;
const CLEAR = 4;

/**
 * Moves insets into their corners without changing their scale. A frame too short for an inset beside the rest
 * grows downwards; one in a northern corner that would cover land stands below it, at the same side.
 *
 * @param frame the sheet
 * @param requests boxes in the frame's units, drawn in this order; those of one corner stand over one another
 * @param occupied points of what is drawn in its true place
 * @returns the insets, in whole units, and the height the frame needs
 * @example placeInsets(frame, [], []).height // the frame's own
 */
export function placeInsets(
  frame: Frame,
  requests: readonly InsetRequest[],
  occupied: readonly (readonly [number, number])[],
): { insets: Inset[]; height: number } {
  let height = frame.height;
  const sized = requests.map((request) => ({
    ...request,
    width: Math.ceil(request.box.right - request.box.left) + 2 * PADDING,
    tall: Math.ceil(request.box.bottom - request.box.top) + 2 * PADDING,
  }));
  const placed: Inset[] = [];
  for (const { territory, corner, box, width, tall } of sized) {
    const left = corner.endsWith("east") ? frame.width - FROM_SIDE - width : FROM_SIDE;
    const column = occupied.filter(([x]) => x > left - CLEAR && x < left + width + CLEAR);
    const taken = placed.filter((other) => other.box.left < left + width && left < other.box.right);
    const atTop: Box = { left, top: FROM_END, right: left + width, bottom: FROM_END + tall };
    const topIsFree =
      corner.startsWith("north") &&
      !taken.some((other) => overlap(other.box, atTop)) &&
      column.every(([, y]) => y > atTop.bottom + CLEAR);
    const lowest = column.reduce((low, [, y]) => Math.max(low, y + CLEAR), 0);
    const below = taken.reduce((low, other) => Math.max(low, other.box.bottom + FROM_END), Math.ceil(lowest));
    const top = topIsFree ? FROM_END : Math.max(height - FROM_END - tall, below);
    height = Math.max(height, top + tall + FROM_END);
    const at: Box = { left, top, right: left + width, bottom: top + tall };
    placed.push({
      territory,
      box: at,
      dx: Math.round(left + PADDING - box.left),
      dy: Math.round(top + PADDING - box.top),
    });
  }
  return { insets: placed, height };
}
