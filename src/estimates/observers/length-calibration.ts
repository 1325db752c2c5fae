import { mean, sum } from '../../maths/variance.ts';
import type { Interval } from '../shapes.ts';
import { limitsOfAgreement } from './limits-of-agreement.ts';

export interface KnownAndEstimated {
  readonly knownMm: number;
  readonly estimatedMm: number;
}

export interface LengthCalibration {
  readonly pieces: number;
  /** Mean of estimated less known. */
  readonly biasMm: number;
  readonly biasIntervalMm: Interval;
  readonly standardDeviationMm: number;
  readonly limitsMm: Interval;
  /** Millimetres of estimate per millimetre of length; null when all pieces have one length. */
  readonly slope: number | null;
  /** Share of the estimates within the pass mark; null without a pass mark. */
  readonly shareWithin: number | null;
  /** Whether both limits lie within the pass mark; null without one. */
  readonly passes: boolean | null;
}

/**
 * How well a diver estimates lengths, in millimetres, against pieces of known length.
 *
 * Bias, standard deviation and limits of agreement of estimated less known, and the slope of estimated on known by
 * least squares: under 1, small ones are called too large and large ones too small. A diver passes when both limits
 * lie within the pass mark, which the officer chooses: 95 of 100 estimates are then expected within it.
 *
 * Assumes pieces shown in random order under water, each estimated once, the diver not told. Null under 3 pieces.
 * Source: Bland and Altman 1986; least squares (from memory). Training against known lengths is common practice.
 */
export function lengthCalibration(
  pieces: readonly KnownAndEstimated[],
  passMarkMm: number | null,
): LengthCalibration | null {
  const differences = pieces.map(({ knownMm, estimatedMm }) => estimatedMm - knownMm);
  const found = limitsOfAgreement(differences);
  if (found === null) return null;
  const within = (differenceMm: number) => passMarkMm === null || Math.abs(differenceMm) <= passMarkMm;
  return {
    pieces: found.pairs,
    biasMm: found.bias,
    biasIntervalMm: found.biasInterval,
    standardDeviationMm: found.standardDeviation,
    limitsMm: found.limits,
    slope: slopeOf(pieces),
    shareWithin: passMarkMm === null ? null : differences.filter(within).length / differences.length,
    passes: passMarkMm === null ? null : found.limits.every(within),
  };
}

function slopeOf(pieces: readonly KnownAndEstimated[]): number | null {
  const knownMm = mean(pieces.map((piece) => piece.knownMm));
  const squares = sum(pieces.map((piece) => (piece.knownMm - knownMm) ** 2));
  if (squares === 0) return null;
  return sum(pieces.map((piece) => (piece.knownMm - knownMm) * piece.estimatedMm)) / squares;
}
