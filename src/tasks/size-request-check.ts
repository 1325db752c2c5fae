/** What can be wrong with the numbers that were typed. */

import { type PlanProblem, planProblem } from '../planning/size/plan-problem.ts';
import { numberProblems, wholeProblems } from '../planning/size/typed-numbers.ts';
import type { SizeRequest } from './size-shapes.ts';

export function sizeRequestProblems(request: SizeRequest): readonly PlanProblem[] {
  const { goal, stationsPerDay, days, dayCost, mostStations } = request;
  const what = { cv: 'targetCv', margin: 'margin', change: 'change' }[goal];
  const targets = [request.target, ...request.species.flatMap(({ target }) => target ?? [])];
  const given = (name: string, value: number | null) =>
    value === null ? [] : numberProblems(name, value, { above: 0 });
  return [
    ...((request.survey === null) === (request.typed.length === 0)
      ? [planProblem('plan-source-unclear')]
      : []),
    ...targets.flatMap((value) =>
      numberProblems(what, value, { above: 0, atMost: goal === 'change' ? 100 : 2 }),
    ),
    ...(goal === 'change' && targets.includes(1) ? [planProblem('plan-change-is-none')] : []),
    ...numberProblems('power', request.power, { atLeast: 0.5, below: 1 }),
    ...numberProblems('confidence', request.confidence, { above: 0.5, below: 1 }),
    ...numberProblems('assurance', request.assurance, { atLeast: 0.5, below: 1 }),
    ...given('stationsPerBoatDay', stationsPerDay),
    ...given('costPerStation', request.stationCost),
    ...given('costPerTransect', request.transectCost),
    ...((request.stationCost === null) === (request.transectCost === null)
      ? []
      : [planProblem('plan-two-costs')]),
    ...given('days', days),
    ...given('dayCost', dayCost),
    ...(stationsPerDay === null && days !== null
      ? [planProblem('plan-days-need-rate', { what: '--days' })]
      : []),
    ...(stationsPerDay === null && dayCost !== null
      ? [planProblem('plan-days-need-rate', { what: '--day-cost' })]
      : []),
    ...(mostStations === null
      ? []
      : wholeProblems('stations', mostStations, { atLeast: 2, atMost: 100_000 })),
    ...wholeProblems('simulations', request.simulations, { atLeast: 100, atMost: 100_000 }),
    ...request.typed.flatMap((one) => [
      ...numberProblems('densityPerHa', one.meanPerHa, { above: 0 }),
      ...(one.clumpingK === null ? [] : numberProblems('clumpingK', one.clumpingK, { atLeast: 0.01 })),
      ...numberProblems('searchedAreaM2', one.stationAreaM2, { above: 0 }),
    ]),
  ];
}
