import type { ChangeRow } from "../../../publishing/contracts.ts";
import { grouped, inWords, signed } from "../text/numbers.ts";
import type { Sentence } from "../text/sentences.ts";
import type { FigureRow } from "./figure-row.ts";
import { change, figured, interval } from "./figure-words.ts";

type Figures = NonNullable<ChangeRow["stricter"]>;

/** A rule in words. @example ruleWords(5) // => "Five visits or more" */
export function ruleWords(minimum_visits: number): string {
  const words = inWords(minimum_visits);
  return `${words.charAt(0).toUpperCase()}${words.slice(1)} ${minimum_visits === 1 ? "visit" : "visits"} or more`;
}

/** Net change of squares under one rule as a row of a table. @example netRow(figures).estimate // "+11 %" */
export function netRow(figures: Figures): FigureRow {
  const { net, net_percent, interval_low: low, interval_high: high, comparable } = figures;
  return {
    ...start(figures),
    estimate: net_percent === null ? signed(net) : `${change(net_percent)}\u00a0%`,
    interval: low === null || high === null ? "" : `${signed(low)} to ${signed(high)} squares`,
    counts: [comparable],
    ...(figures.judged && low !== null && high !== null ? { says: saysNet(low, high) } : { says: "" }),
  };
}

/** Turnover under one rule as a row of a table. @example turnoverRow(figures).interval // "18 to 31" */
export function turnoverRow(figures: Figures): FigureRow {
  const { turnover, turnover_low, turnover_high, comparable } = figures;
  return {
    ...start(figures),
    estimate: turnover === null ? "" : `${figured(turnover)}\u00a0%`,
    interval: interval(turnover_low, turnover_high, (end) => figured(end)),
    counts: [comparable],
  };
}

function start({ minimum_visits, judged, reason }: Figures): Pick<FigureRow, "name" | "reason"> {
  return { name: ruleWords(minimum_visits), reason: judged ? "" : reason || "no figure" };
}

function saysNet(low: number, high: number): string {
  return low > 0 ? "more squares" : high < 0 ? "fewer squares" : "no direction";
}

/**
 * Whether the stricter coverage rule changes what squares say, in a sentence.
 *
 * @example rulesSentence({ judged: true, interval_low: 1, interval_high: 9, stricter: null, … }) // => ""
 */
export function rulesSentence(
  row: Pick<ChangeRow, "judged" | "interval_low" | "interval_high" | "stricter">,
): Sentence {
  const { stricter } = row;
  if (stricter === null) return "";
  const says = (figures: Pick<Figures, "judged" | "interval_low" | "interval_high">) =>
    figures.judged && figures.interval_low !== null && figures.interval_high !== null
      ? saysNet(figures.interval_low, figures.interval_high)
      : "";
  const [first, second] = [says(row), says(stricter)];
  const rest = `${grouped(stricter.comparable)} comparable ${stricter.comparable === 1 ? "square" : "squares"}`;
  if (first === "" && second === "") return "Under neither rule can the squares **be judged**.";
  if (second === "") return `Under the stricter rule ${rest} are left, too few **to be judged**.`;
  if (first === second) return `Under the stricter rule, with ${rest}, the squares say **the same**: ${first}.`;
  return `The rule matters: ${first === "" ? "not judged" : first} under the first, **${second}** under the stricter, with ${rest}.`;
}
