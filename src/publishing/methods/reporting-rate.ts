import type { Scheme } from "../../scheme/scheme.ts";
import { number, type ToldMethod } from "./statement.ts";

/** The reporting rate of complete lists, as the methods page tells it. */
export function reportingRateMethod({ settings }: Scheme): ToldMethod {
  const own = settings.change.reporting_rate;
  return {
    does: "The share of complete lists that name the species, at equal length of list, season and place. Only lists declared complete enter, for only they tell what was not seen; surveys for one species and museum lots do not. Squares are compared with themselves: those with lists in both periods.",
    formulas: [
      "log odds of being named = square + period + log (other species on the list) + two waves of the year",
      "change = 100 (rate<sub>later</sub> / rate<sub>earlier</sub> − 1) %, each the rate that all compared lists would have, were they of that period",
    ],
    tells: "whether the species is named on more or fewer lists of the same kind.",
    tellsNot:
      "that it is in more squares, or more numerous: a share of visits is no count. Length stands for what a visit sees: where most of a group grows commoner, lists grow longer for the same walk, and every rate at equal length falls by part of that.",
    speaks: `from ${number(own.minimum_visits)} complete lists in each period, ${number(own.minimum_detections)} of them that name it, and ${number(own.minimum_squares)} 10 km squares with lists in both periods.`,
    few: "squares in which every list names it, or none, say nothing of change. The interval leaves out each square in turn, so that visits to one square do not pass for many; with few squares it is wide.",
    source:
      "J. K. Szabo, P. A. Vesk, P. W. J. Baxter and H. P. Possingham (2010), Regional avian species declines estimated from volunteer-collected long-term data using List Length Analysis, <i>Ecological Applications</i> 20: 2157–2169.",
    reading:
      "the paper’s model is a logistic one with the logarithm of the list’s length; that length counts the other species, the season’s two waves, squares, the rates and the interval are ours.",
  };
}
