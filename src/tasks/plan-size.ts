/** How many stations the next survey needs, from an earlier survey of the book or from typed values. */

import { planProblem, stops } from '../planning/size/plan-problem.ts';
import type { Store } from '../survey/store.ts';
import type { Species } from '../survey/words.ts';
import { readPilot, unseenProblems } from './pilot.ts';
import { largestNeed, needOf } from './size-need.ts';
import { sizeRequestProblems } from './size-request-check.ts';
import { curveOf, rowsOf, sizesShown, transectAdvice } from './size-rows.ts';
import type { SizeRequest, SizeResult } from './size-shapes.ts';
import { type SizeSubject, subjectOfPilot, subjectOfTyped } from './size-subject.ts';

/** Never throws on numbers; a name that the book does not hold is a Failure. `store` is null for typed values. */
export async function planSize(store: Store | null, request: SizeRequest): Promise<SizeResult> {
  const asked = sizeRequestProblems(request);
  const pilot =
    store === null || request.survey === null
      ? null
      : await readPilot(store, { survey: request.survey, species: request.species.map((one) => one.name) });
  const dataVersion = store === null ? null : await store.dataVersion();
  const problems = [...asked, ...(pilot?.problems ?? []), ...(pilot === null ? [] : unseenProblems(pilot))];
  const subjects = [
    ...(pilot?.seen ?? []).map((one) => subjectOfPilot(one, request.assurance)),
    ...request.typed.map(subjectOfTyped),
  ];
  const base = {
    ...{ unseen: pilot?.unseen ?? [], bookSpecies: pilot?.words.species ?? [], dataVersion },
    pilot: pilot === null ? null : { survey: pilot.survey, stations: stationsIn(pilot.strata) },
  };
  const reach = reachOf(request) ?? base.pilot?.stations ?? null;
  const nothing = { ...base, species: [], need: null, reach };
  if (stops(problems)) return { ...nothing, problems };
  if (subjects.length === 0)
    return {
      ...nothing,
      problems: base.unseen.length > 0 ? problems : [...problems, planProblem('plan-no-species')],
    };
  const targets = subjects.map((subject) => targetOf(subject, request, pilot?.words.species ?? []));
  const needs = subjects.map((subject, i) => needOf(subject, targets[i]!, request));
  const need = largestNeed(subjects, needs);
  const sizes = sizesShown(subjects, need?.stations ?? null, reach);
  const species = subjects.map((subject, i) => ({
    ...{ subject, target: targets[i]!, ...needs[i]! },
    rows: rowsOf(subject, targets[i]!, sizes, request),
    transects: transectAdvice(subject, request),
    curve: curveOf(subject, sizes, request),
  }));
  return { ...base, species, need, reach, problems };
}

function stationsIn(strata: readonly { readonly stations: number }[]): number {
  return strata.reduce((total, stratum) => total + stratum.stations, 0);
}

function reachOf({ mostStations, days, stationsPerDay }: SizeRequest): number | null {
  const byDays = days === null || stationsPerDay === null ? Infinity : Math.floor(days * stationsPerDay);
  const reach = Math.min(mostStations ?? Infinity, byDays);
  return Number.isFinite(reach) ? Math.max(2, reach) : null;
}

/** A target of its own, by any name of the species; else the common one. */
function targetOf(subject: SizeSubject, request: SizeRequest, species: readonly Species[]): number {
  const record = species.find((one) => one.name === subject.name);
  const names = [
    subject.name,
    record?.code,
    record?.commonName,
    record?.localName,
    ...(record?.aliases ?? []),
  ];
  const own = request.species.find(({ name }) =>
    names.some((one) => one?.toLowerCase() === name.trim().toLowerCase()),
  );
  return own?.target ?? request.target;
}
