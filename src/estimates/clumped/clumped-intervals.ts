/**
 * The clumped-count interval: the interval of the house for the density of animals that live in clumps.
 *
 * Here live the two models of clumped counts, their posteriors for the density of a stratum, and the
 * sum over strata. The point estimate and its standard error are design-based and do not live here;
 * neither does the bound for a survey without any animal. docs/methods/clumped-interval.md explains
 * and measures the method.
 */

import { type ClumpedPosterior, clumpedPosterior } from './clumped-posterior.ts';
import { type ClumpedPriors, DEFAULT_CLUMPED_PRIORS } from './clumped-priors.ts';
import {
  COARSE_SIGMAS,
  createRows,
  createTools,
  FINE_SIGMAS,
  type PosteriorTools,
} from './posterior-tools.ts';
import type { ProbabilityRows } from './probability-rows.ts';
import { type PosteriorMemory, posteriorMemory } from './remembered-posteriors.ts';
import type { StationCount } from './station-count.ts';
import { zeroStratumPosterior } from './zero-stratum.ts';

export interface ClumpedIntervals {
  readonly priors: ClumpedPriors;
  /**
   * Belief about the density of one stratum, per hectare, after counting its stations.
   *
   * Counts are clumped around the density times the searched area, either as a negative binomial or
   * as a Poisson with a log-normal rate. Log density is believed flat within a factor of 403 of the
   * observed mean, clumping as the priors say; both are summed out, and the two models are averaged
   * by how well they foretold the counts. Assumes stations placed at random and every animal in the
   * belt seen. Throws without an animal: see `zeroStratum`.
   */
  posterior(counts: readonly StationCount[]): ClumpedPosterior;
  /** Belief about a stratum without animals inside a survey that has animals: see `zeroStratumPosterior`. */
  zeroStratum(areasM2: readonly number[]): ClumpedPosterior;
  /** What the models need, as fine as so many stations can tell apart. */
  tools(stations: number): PosteriorTools;
  /** The same with other priors (an archive's), sharing what was already computed. */
  withPriors(priors: ClumpedPriors): ClumpedIntervals;
}

/** Above so many stations the counts know sigma better than the coarse grid's step. */
const STATIONS_FOR_THE_FINE_GRID = 40;

/** Makes a room with an empty memory; keep it for a whole report, since it grows faster with use. */
export function createClumpedIntervals(priors: ClumpedPriors = DEFAULT_CLUMPED_PRIORS): ClumpedIntervals {
  const memory = {
    coarse: createRows(COARSE_SIGMAS),
    fine: createRows(FINE_SIGMAS),
    posteriors: posteriorMemory(),
  };
  return withMemory(priors, memory);
}

interface Memory {
  readonly coarse: ProbabilityRows;
  readonly fine: ProbabilityRows;
  readonly posteriors: PosteriorMemory;
}

function withMemory(priors: ClumpedPriors, memory: Memory): ClumpedIntervals {
  const few = createTools(priors, memory.coarse);
  const many = createTools(priors, memory.fine);
  const toolsFor = (stations: number) => (stations > STATIONS_FOR_THE_FINE_GRID ? many : few);
  return {
    priors,
    posterior: (counts) =>
      memory.posteriors.find(counts, priors, () => clumpedPosterior(counts, toolsFor(counts.length))),
    tools: toolsFor,
    zeroStratum: (areasM2) => zeroStratumPosterior(areasM2, priors),
    withPriors: (others) => withMemory(others, memory),
  };
}
