import type { ChangeRow } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import { FEWEST_FOR_PERCENT, signed } from "./numbers.ts";

/**
 * Net change as a whole percentage of the earlier squares, with its sign; in squares where the earlier ones are
 * fewer than 20, of which no percentage is given.
 *
 * @returns empty where there is none
 * @example netPercent({ net_percent: -11.4, net: -8, retained: 50, lost: 20 }) // "−11 %"
 */
export function netPercent({
  net_percent,
  net,
  retained,
  lost,
}: Pick<ChangeRow, "net_percent" | "net" | "retained" | "lost">): string {
  if (net_percent === null) return "";
  if (retained + lost < FEWEST_FOR_PERCENT)
    return say("text.net-squares", { signed: signed(net), squares: Math.abs(net) });
  const whole = Math.round(net_percent);
  return say("text.percent", { number: signed(whole === 0 ? 0 : whole) });
}
