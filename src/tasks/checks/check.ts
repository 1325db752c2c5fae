/** The shape of every check: one question about one survey, asked wherever the data call for it. */

import type { Parameters, Place, Problem, Severity } from '../../survey/message.ts';
import type { StationWithTransects, SurveyInHand, TransectWithTallies } from '../../survey/observation.ts';
import { type ProblemCode, problemSeverities } from '../../survey/problem-codes.ts';
import { problemOf } from '../../survey/problem-of.ts';
import type { Species } from '../../survey/words.ts';
import type { TargetList } from '../targets.ts';
import type { CheckGround } from './ground.ts';

export interface CheckContext {
  readonly inHand: SurveyInHand;
  readonly targetList: TargetList;
  /** Every species of the book by its identity. */
  readonly species: ReadonlyMap<string, Species>;
  /** ISO day; null for an invented book, whose days are nobody's yesterday. */
  readonly today: string | null;
  /** The map of the book, its plans, and what was picked by hand elsewhere. */
  readonly ground: CheckGround;
}

export interface Check {
  readonly code: ProblemCode;
  readonly severity: Severity;
  readonly run: (context: CheckContext) => readonly Problem[];
}

export function checkOf(code: ProblemCode, run: (context: CheckContext) => readonly Problem[]): Check {
  return { code, severity: problemSeverities[code], run };
}

/** What a check found at a station, with the value in question and what goes into its sentence. */
export interface Finding {
  readonly value?: string | number | null;
  readonly parameters?: Parameters;
  readonly suggestion?: string | null;
}

/** A check that looks at one station at a time and asks at most once there. */
export function stationCheck(
  code: ProblemCode,
  look: (station: StationWithTransects, context: CheckContext) => Finding | null,
): Check {
  return checkOf(code, (context) => {
    const found: Problem[] = [];
    for (const station of context.inHand.stations) {
      const finding = look(station, context);
      if (finding !== null) found.push(problemOf(code, placeOfStation(context.inHand, station), finding));
    }
    return found;
  });
}

/** A check that looks at one transect at a time, later swims as well, and asks at most once there. */
export function transectCheck(
  code: ProblemCode,
  look: (transect: TransectWithTallies, context: CheckContext) => Finding | null,
): Check {
  return checkOf(code, (context) => {
    const found: Problem[] = [];
    for (const station of context.inHand.stations) {
      for (const transect of allTransects(station)) {
        const finding = look(transect, context);
        if (finding === null) continue;
        found.push(problemOf(code, placeOfTransect(context.inHand, station, transect), finding));
      }
    }
    return found;
  });
}

export function placeOfStation({ survey }: SurveyInHand, { record }: StationWithTransects): Place {
  return { survey: survey.name, station: record.code };
}

export function placeOfTransect(
  inHand: SurveyInHand,
  station: StationWithTransects,
  { record }: TransectWithTallies,
): Place {
  return { ...placeOfStation(inHand, station), transect: record.code, swim: record.swim };
}

export function allTransects({
  transects,
  laterSwims,
}: StationWithTransects): readonly TransectWithTallies[] {
  return laterSwims.length === 0 ? transects : [...transects, ...laterSwims];
}

/** Searched, wholly or in part. */
export function isSearched({ status }: Pick<TransectWithTallies, 'status'>): boolean {
  return status === 'done' || status === 'partial';
}
