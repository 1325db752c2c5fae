/** What is asked of a draw, and what an officer should hear before it is made. */

import type { Position } from '../../survey/map-area.ts';
import { type PlanProblem, planProblem } from '../size/plan-problem.ts';
import { numberProblems, repeatedNames, wholeProblems } from '../size/typed-numbers.ts';
import type { DrawMethod } from './drawn-plan.ts';
import type { DistanceM, DrawGround } from './ground.ts';
import type { InclusionWeight } from './ordered-positions.ts';

export interface NamedPosition {
  readonly code: string;
  readonly position: Position;
}

export interface DrawStratum {
  readonly name: string;
  /** Codes begin with it; with the name where it is not given. */
  readonly codePrefix?: string;
  readonly ground: DrawGround;
  /** Stations to visit that speak for the stratum: fixed ones and new ones together. */
  readonly stations: number;
  /** Ordered spares for stations that cannot be worked. */
  readonly spares: number;
  /** Stations of earlier surveys to visit again. They must have been drawn at random when they were new. */
  readonly fixed: readonly NamedPosition[];
  /** Stations somebody chose: beside the draw, never part of it. */
  readonly handPicked: readonly NamedPosition[];
}

export interface DrawRequest {
  readonly strata: readonly DrawStratum[];
  readonly method: DrawMethod;
  readonly seed: number;
  readonly minimumSpacingM: number | null;
  readonly distanceM: DistanceM;
  /** Unequal chances; null for the same chance everywhere in a stratum. */
  readonly weight?: InclusionWeight | null;
  /** Places that the pivotal draw lets fight for each stratum; 2000 when not said. */
  readonly candidates?: number;
}

const mostStations = 20_000;

export function checkDraw(request: DrawRequest): readonly PlanProblem[] {
  const { strata, seed, minimumSpacingM, candidates } = request;
  if (strata.length === 0) return [planProblem('plan-no-strata')];
  const codes = strata.flatMap(({ fixed, handPicked }) => [...fixed, ...handPicked].map((one) => one.code));
  return [
    ...repeatedNames(strata.map((stratum) => stratum.name)),
    ...repeatedNames(codes.map((code) => codes.find((one) => bareCode(one) === bareCode(code))!)),
    ...wholeProblems('seed', seed, { atLeast: 0, atMost: 2 ** 31 - 1 }),
    ...(minimumSpacingM === null ? [] : numberProblems('minimumSpacingM', minimumSpacingM, { above: 0 })),
    ...(candidates === undefined
      ? []
      : wholeProblems('candidates', candidates, { atLeast: 10, atMost: 50_000 })),
    ...strata.flatMap(stratumProblems),
  ];
}

/** Capitals do not make another station: people type codes as they come. */
export function bareCode(code: string): string {
  return code.trim().toLowerCase();
}

function stratumProblems(stratum: DrawStratum): readonly PlanProblem[] {
  const { name, stations, spares, fixed, handPicked, ground } = stratum;
  const outside = (some: readonly NamedPosition[]) => some.filter((one) => !ground.contains(one.position));
  const isCrowded = fixed.length > stations;
  return [
    ...wholeProblems('stations', stations, { atLeast: 1, atMost: mostStations }),
    ...wholeProblems('spares', spares, { atLeast: 0, atMost: mostStations }),
    ...(isCrowded
      ? [planProblem('plan-fixed-exceed-stations', { stratum: name, fixed: fixed.length, stations })]
      : []),
    ...outside(fixed).map(({ code }) => planProblem('plan-fixed-outside', { code, stratum: name })),
    ...outside(handPicked).map(({ code }) =>
      planProblem('plan-hand-picked-outside', { code, stratum: name }),
    ),
    ...(handPicked.length > 0
      ? [planProblem('plan-hand-picked', { stratum: name, count: handPicked.length })]
      : []),
  ];
}
