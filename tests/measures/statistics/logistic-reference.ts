/** Regressions of invented counts by R and statsmodels; the scripts and versions stand in the file. */
import type { Outcomes } from "../../../src/measures/statistics/logistic.ts";
import { readReferenceFile } from "../../support/reference.ts";

interface LogisticReference {
  successes: number[];
  trials: number[];
  level: number[];
  length_of: number[];
  wave: number[];
  offset_of: number[];
  stratum: number[];
  /** Without strata: effects in the order level 1, level 2, constant, length_of, wave; matrices row by row. */
  one: { effects: number[]; covariance: number[]; log_likelihood: number; hc3: number[]; jackknife: number[] };
  /** With strata: effects in the order level 1, level 2, length_of, wave; strata without those that say nothing. */
  many: {
    effects: number[];
    strata: number[];
    covariance: number[];
    log_likelihood: number;
    jackknife: number[];
    rates: number[];
    slopes: number[];
  };
  statsmodels: { effects: number[]; standard_errors: number[] };
}

export const REFERENCE = readReferenceFile<LogisticReference>("logistic.json");

const { successes, trials, level, length_of, wave, offset_of, stratum } = REFERENCE;
const common = {
  successes: Float64Array.from(successes),
  trials: Float64Array.from(trials),
  level: Int32Array.from(level),
  levels: 3,
  offset: Float64Array.from(offset_of),
};
const [lengths, waves] = [Float64Array.from(length_of), Float64Array.from(wave)];

/** The counts with one constant, which is a covariate of ones. */
export const ONE: Outcomes = {
  ...common,
  covariates: [new Float64Array(trials.length).fill(1), lengths, waves],
  stratum: null,
};

/** The counts with an effect of each stratum. */
export const MANY: Outcomes = { ...common, covariates: [lengths, waves], stratum: Int32Array.from(stratum) };

/** A line of a matrix that is written row by row. */
export function unit(size: number, at: number): number[] {
  return Array.from({ length: size }, (_, index) => (index === at ? 1 : 0));
}
