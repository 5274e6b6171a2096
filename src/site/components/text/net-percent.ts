import type { ChangeRow } from "../../../publishing/contracts.ts";
import { grouped } from "./numbers.ts";

/**
 * Net change as a whole percentage of the earlier squares, with its sign.
 *
 * @returns empty where there is none
 * @example netPercent({ net_percent: -11.4 }) // "−11 %"
 */
export function netPercent({ net_percent }: Pick<ChangeRow, "net_percent">): string {
  if (net_percent === null) return "";
  const whole = Math.round(net_percent);
  return `${whole > 0 ? "+" : ""}${grouped(whole === 0 ? 0 : whole)} %`;
}
