/** The columns of a table of own values, and which of them each kind of value needs. */

import { countMethods, type ValueKind } from '../survey/value-words.ts';
import { lengthMeasures, weightStates } from '../survey/words.ts';

export type ValueColumn =
  | { readonly is: 'text' }
  | { readonly is: 'one of'; readonly options: readonly string[] }
  | {
      readonly is: 'number';
      readonly above?: number;
      readonly atMost?: number;
      readonly whole?: boolean;
    };

const text = { is: 'text' } as const;
const positive = { is: 'number', above: 0 } as const;
const state = { is: 'one of', options: weightStates } as const;

export const valueColumns: Readonly<Record<string, ValueColumn>> = {
  species: text,
  what: text,
  source: text,
  // a length-weight pair: W = a L^b
  a: positive,
  b: { is: 'number', above: 0.5, atMost: 4 },
  length_unit: { is: 'one of', options: ['mm', 'cm'] },
  weight_unit: { is: 'one of', options: ['g', 'kg'] },
  state,
  length_measure: { is: 'one of', options: lengthMeasures },
  length_min_mm: positive,
  length_max_mm: positive,
  residual_sd_ln: { is: 'number', above: 0, atMost: 2 },
  ln_a_variance: positive,
  ln_a_b_covariance: { is: 'number' },
  b_variance: positive,
  animals: { is: 'number', above: 0, whole: true },
  // a mean weight
  weight_g: positive,
  standard_error_g: positive,
  mean_length_mm: positive,
  // a density
  density_per_ha: positive,
  cv: positive,
  method: { is: 'one of', options: countMethods },
  belt_width_m: positive,
  meaning: text,
  // a conversion, as a share: 0.09 for 9 %
  basis: { is: 'one of', options: ['weight', 'length'] },
  from: state,
  to: state,
  ratio: { is: 'number', above: 0, atMost: 1.5 },
  ratio_low: { is: 'number', above: 0, atMost: 1.5 },
  ratio_high: { is: 'number', above: 0, atMost: 1.5 },
  // lengths
  length_mm: positive,
  minimum_mm: positive,
  minimum_dried_mm: positive,
  maximum_mm: positive,
  common_mm: positive,
  place: text,
};

interface ValueField {
  readonly column: string;
  readonly field: string;
  readonly needed: boolean;
}

const must = (column: string, field: string): ValueField => ({ column, field, needed: true });
const may = (column: string, field: string): ValueField => ({ column, field, needed: false });

export const valueFields: Readonly<Record<ValueKind, readonly ValueField[]>> = {
  'length-weight': [
    must('a', 'a'),
    must('b', 'b'),
    must('length_unit', 'lengthUnit'),
    must('weight_unit', 'weightUnit'),
    must('state', 'weightState'),
    may('length_measure', 'lengthMeasure'),
    may('length_min_mm', 'lengthMinMm'),
    may('length_max_mm', 'lengthMaxMm'),
    may('residual_sd_ln', 'residualSdLn'),
    may('ln_a_variance', 'lnAVariance'),
    may('ln_a_b_covariance', 'lnABCovariance'),
    may('b_variance', 'bVariance'),
    may('animals', 'animals'),
  ],
  'mean-weight': [
    must('weight_g', 'weightG'),
    must('state', 'weightState'),
    may('standard_error_g', 'standardErrorG'),
    may('animals', 'animals'),
    may('mean_length_mm', 'meanLengthMm'),
    may('place', 'place'),
  ],
  conversion: [
    must('basis', 'basis'),
    must('from', 'from'),
    must('to', 'to'),
    may('ratio', 'ratio'),
    may('ratio_low', 'ratioLow'),
    may('ratio_high', 'ratioHigh'),
  ],
  'reference-density': [
    must('density_per_ha', 'densityPerHa'),
    may('cv', 'cv'),
    must('method', 'method'),
    may('belt_width_m', 'beltWidthM'),
    may('place', 'place'),
    must('meaning', 'meaning'),
  ],
  'size-at-maturity': [
    must('length_mm', 'lengthMm'),
    may('length_measure', 'lengthMeasure'),
    may('place', 'place'),
  ],
  'size-limit': [
    must('minimum_mm', 'minimumMm'),
    may('minimum_dried_mm', 'minimumDriedMm'),
    may('maximum_mm', 'maximumMm'),
    must('place', 'place'),
  ],
  'usual-length': [
    may('common_mm', 'commonMm'),
    must('maximum_mm', 'maximumMm'),
    may('length_measure', 'lengthMeasure'),
  ],
};
