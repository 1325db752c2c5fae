import { detectableOnLog } from './detectable-change.ts';
import { pilotFactor } from './pilot-factor.ts';
import { type Planned, type PlanProblem, planned, planProblem, refused, stops } from './plan-problem.ts';
import { numberProblems, repeatedNames, wholeProblems } from './typed-numbers.ts';

export interface CurveRequest {
  readonly species: readonly {
    readonly species: string;
    readonly stationCv: number;
    /** Stations of the pilot; null to take the CV as it stands. */
    readonly pilotStations: number | null;
    /** Stations of the earlier survey to compare with; null for a survey of the same size. */
    readonly stationsBefore: number | null;
  }[];
  readonly stations: readonly number[];
  /** Stations a boat works in a day; null when days are not asked for. */
  readonly stationsPerBoatDay: number | null;
  readonly significance?: number;
  readonly power?: number;
  readonly assurance?: number;
}

export interface CurvePoint {
  readonly species: string;
  readonly stations: number;
  /** Whole days: a started day is a day. */
  readonly boatDays: number | null;
  /** Expected standard error over the mean, the CV between stations taken as the pilot showed it. */
  readonly cv: number;
  /** The same with the pilot's factor: in 8 of 10 pilots the survey will be at least as good. */
  readonly cvAssured: number;
  /** Smallest fall and rise that would be told, as shares, with the CV of the pilot and with the assured one. */
  readonly fall: number;
  readonly fallAssured: number;
  readonly rise: number;
  readonly riseAssured: number;
}

/**
 * CV and detectable change against the number of stations and the days of the boat, species by species.
 *
 * A plain table, row by row as a picture would need it. See `detectableChange` for what a change means, and
 * `pilotFactor` for the assured columns. Refuses impossible numbers and an empty list.
 */
export function precisionCurve(request: CurveRequest): Planned<readonly CurvePoint[]> {
  const problems: readonly PlanProblem[] = problemsOf(request);
  if (stops(problems)) return refused(problems);
  return planned(
    request.species.flatMap((species) => request.stations.map((n) => pointOf(request, species, n))),
  );
}

function pointOf(
  request: CurveRequest,
  species: CurveRequest['species'][number],
  stations: number,
): CurvePoint {
  const { significance = 0.1, power = 0.8, assurance = 0.8 } = request;
  const factor =
    species.pilotStations === null ? 1 : pilotFactor({ stations: species.pilotStations, assurance }).value!;
  const before = species.stationsBefore ?? stations;
  const changeWith = (stationCv: number) =>
    detectableOnLog({
      error: stationCv * Math.sqrt(1 / before + 1 / stations),
      degreesOfFreedom: before + stations - 2,
      significance,
      power,
    });
  const asSeen = changeWith(species.stationCv);
  const assured = changeWith(species.stationCv * factor);
  const days = request.stationsPerBoatDay;
  return {
    species: species.species,
    stations,
    boatDays: days === null ? null : Math.ceil(stations / days),
    cv: species.stationCv / Math.sqrt(stations),
    cvAssured: (species.stationCv * factor) / Math.sqrt(stations),
    fall: asSeen.fall,
    fallAssured: assured.fall,
    rise: asSeen.rise,
    riseAssured: assured.rise,
  };
}

function problemsOf(request: CurveRequest): readonly PlanProblem[] {
  const { species, stations, stationsPerBoatDay, significance = 0.1, power = 0.8, assurance = 0.8 } = request;
  return [
    ...(species.length === 0 ? [planProblem('plan-no-species')] : []),
    ...repeatedNames(species.map((one) => one.species)),
    ...stations.flatMap((n) => wholeProblems('stations', n, { atLeast: 2, atMost: 100_000 })),
    ...(stationsPerBoatDay === null
      ? []
      : numberProblems('stationsPerBoatDay', stationsPerBoatDay, { above: 0 })),
    ...numberProblems('significance', significance, { above: 0, below: 0.5 }),
    ...numberProblems('power', power, { atLeast: 0.5, below: 1 }),
    ...species.flatMap((one) => [
      ...numberProblems('stationCv', one.stationCv, { above: 0 }),
      ...(one.stationsBefore === null
        ? []
        : wholeProblems('stationsBefore', one.stationsBefore, { atLeast: 2 })),
      ...(one.pilotStations === null ? [] : pilotFactor({ stations: one.pilotStations, assurance }).problems),
    ]),
  ];
}
