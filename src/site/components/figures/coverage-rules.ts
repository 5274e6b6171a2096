import type { ChangeRow } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import { inWords, signed } from "../text/numbers.ts";
import type { Sentence } from "../text/sentences.ts";
import { capital } from "../text/words.ts";
import type { FigureRow } from "./figure-row.ts";
import { change, figured, interval, percent } from "./figure-words.ts";

type Figures = NonNullable<ChangeRow["stricter"]>;

/** A rule in words. @example ruleWords(5) // => "Five visits or more" */
export function ruleWords(minimum_visits: number): string {
  return say("lines.rule", { n: minimum_visits, words: capital(inWords(minimum_visits)) });
}

/** Net change of squares under one rule as a row of a table. @example netRow(figures).estimate // "+11 %" */
export function netRow(figures: Figures): FigureRow {
  const { net, net_percent, interval_low: low, interval_high: high, comparable } = figures;
  return {
    ...start(figures),
    estimate: net_percent === null ? signed(net) : percent(change(net_percent)),
    interval:
      low === null || high === null ? "" : say("lines.squares-from-to", { low: signed(low), high: signed(high) }),
    counts: [comparable],
    ...(figures.judged && low !== null && high !== null ? { says: saysNet(low, high) } : { says: "" }),
  };
}

/** Turnover under one rule as a row of a table. @example turnoverRow(figures).interval // "18 to 31" */
export function turnoverRow(figures: Figures): FigureRow {
  const { turnover, turnover_low, turnover_high, comparable } = figures;
  return {
    ...start(figures),
    estimate: turnover === null ? "" : percent(figured(turnover)),
    interval: interval(turnover_low, turnover_high, (end) => figured(end)),
    counts: [comparable],
  };
}

function start({ minimum_visits, judged, reason }: Figures): Pick<FigureRow, "name" | "reason"> {
  return { name: ruleWords(minimum_visits), reason: judged ? "" : reason || say("lines.no-figure") };
}

function saysNet(low: number, high: number): string {
  return say(low > 0 ? "lines.more-squares" : high < 0 ? "lines.fewer-squares" : "lines.no-direction");
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
  const n = stricter.comparable;
  if (first === "" && second === "") return say("lines.rules-neither");
  if (second === "") return say("lines.rules-too-few", { n });
  if (first === second) return say("lines.rules-same", { n, says: first });
  return say("lines.rules-differ", { n, first: first || say("lines.not-judged"), second });
}
