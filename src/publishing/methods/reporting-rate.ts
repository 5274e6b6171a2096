import type { Scheme } from "../../scheme/scheme.ts";
import { number, type ToldMethod } from "./statement.ts";

/** The reporting rate of complete lists, as the methods page tells it. */
export function reportingRateMethod({ settings }: Scheme): ToldMethod {
  const own = settings.change.reporting_rate;
  return {
    does: "The share of complete lists that name the species, at equal length of list, season and place. Only lists declared complete enter, for only they tell what was not seen.",
    formulas: [
      "log odds of being named = square + period + log of the list’s length + season",
      "change = 100 (odds<sub>later</sub> / odds<sub>earlier</sub> − 1) %",
    ],
    tells: "whether the species is named on more or fewer lists of the same kind.",
    tellsNot:
      "that it is in more squares, or more numerous: a share of visits is no count. A species that fills the lists also makes them longer.",
    speaks: `from ${number(own.minimum_visits)} complete lists in each period, ${number(own.minimum_detections)} of them that name it, and ${number(own.minimum_squares)} 10 km squares with lists in both periods.`,
    few: "squares in which every list names it, or none, say nothing of change and fall out. Lists of one square are not independent: the interval allows for it by squares.",
    source:
      "J. K. Szabo, P. A. Vesk, P. W. J. Baxter and H. P. Possingham (2010), Regional avian species declines estimated from volunteer-collected long-term data using List Length Analysis, <i>Ecological Applications</i> 20: 2157–2169.",
    reading:
      "the paper’s model is a logistic one with the length of the list; season, place and the interval are ours.",
  };
}
