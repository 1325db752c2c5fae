/** Lays every belt of a plan: start, end, bearing true and by compass, and the share on its ground, before the boat leaves. */

import { type LaidStation, layStations, type StationToLay } from '../../planning/ground/lay-stations.ts';
import { type PlanProblem, planProblem, stops } from '../../planning/size/plan-problem.ts';
import { numberProblems, repeatedNames } from '../../planning/size/typed-numbers.ts';
import type { PlanContent, PlannedStation } from '../../survey/plan-words.ts';
import type { Plan } from '../../survey/words.ts';
import { type SeriesToLay, seriesToLay, type TypedSeries } from './belt-series.ts';
import { layingFindings } from './laying-findings.ts';
import { type PlanGround, readPlanGround, unmapped } from './plan-ground.ts';
import { keepPlan, type PlanTools, planNamed } from './plan-named.ts';

/** A turn somebody fixed, before the belt of this number, positive to starboard. */
export interface Bend {
  readonly code: string;
  readonly belt: number;
  readonly turnDeg: number;
}

export interface LayRequest extends TypedSeries {
  readonly name: string;
  /** The day of the work: the compass needle moves over the years. ISO day. */
  readonly date: string;
  /** Null for the one in the plan. */
  readonly protocol: string | null;
  readonly bends: readonly Bend[];
  /** Turn between belts, in degrees to either side, that may be tried where a straight series does not fit; null for none. */
  readonly turnDeg: number | null;
  /** The contour at a station, true: of bearings as good the nearest to it is taken. */
  readonly along: readonly { readonly code: string; readonly bearingDeg: number }[];
  readonly dryRun: boolean;
}

export interface LayResult {
  readonly plan: Plan;
  /** Null after a stop. */
  readonly content: PlanContent | null;
  readonly written: boolean;
  readonly problems: readonly PlanProblem[];
  readonly dataVersion: string;
}

export async function planLay(request: LayRequest, tools: PlanTools): Promise<LayResult> {
  const { store } = tools;
  const plan = await planNamed(store, request.name);
  const ground = await readPlanGround(store);
  const series = await seriesToLay(store, request, request.protocol ?? plan.content.protocol);
  const problems: PlanProblem[] = [...series.problems];
  if (series.value !== null) problems.push(...requestProblems(request, plan, series.value));
  problems.push(...missingMaps(plan, ground));
  const dataVersion = () => store.dataVersion();
  if (series.value === null || stops(problems)) {
    return { plan, content: null, written: false, problems, dataVersion: await dataVersion() };
  }
  const laid = layAll(plan, series.value, { request, ground });
  const content = contentOf(plan, laid, { request, series: series.value, tools });
  const written = !request.dryRun;
  if (written)
    await keepPlan(tools, { ...plan, content }, `plan ${plan.name}: belts laid for ${request.date}`);
  const found = layingFindings(content, laid, request);
  return { plan, content, written, problems: [...problems, ...found], dataVersion: await dataVersion() };
}

function missingMaps({ content }: Plan, ground: PlanGround): readonly PlanProblem[] {
  return unmapped(
    content.strata.map(({ name }) => name).filter((name) => ground.names.includes(name)),
    ground,
  );
}

function requestProblems(
  { bends, along, turnDeg }: LayRequest,
  { content }: Plan,
  { transects }: SeriesToLay,
): readonly PlanProblem[] {
  const codes = new Set(content.stations.map(({ code }) => code));
  const wrong = bends.filter(
    ({ code, belt }) => !codes.has(code) || !Number.isInteger(belt) || belt < 2 || belt > transects,
  );
  return [
    ...wrong.map(({ code, belt }) => planProblem('plan-bend-unclear', { code, belt, belts: transects })),
    ...repeatedNames(bends.map(({ code, belt }) => `--bend ${code}:${String(belt)}`)),
    ...repeatedNames(along.map(({ code }) => `--along ${code}`)),
    ...bends.flatMap((bend) => numberProblems('bendDeg', bend.turnDeg, { atLeast: -90, atMost: 90 })),
    ...along
      .filter(({ code }) => !codes.has(code))
      .map(({ code }) => planProblem('plan-unknown-station', { code })),
    ...(turnDeg === null ? [] : numberProblems('turnDeg', turnDeg, { above: 0, atMost: 60 })),
  ];
}

function layAll(
  { content }: Plan,
  series: SeriesToLay,
  { request, ground }: { readonly request: LayRequest; readonly ground: PlanGround },
): ReadonlyMap<string, LaidStation> {
  const stations = content.stations
    .filter(({ role }) => role !== 'dropped')
    .map((station): StationToLay => {
      const bends = request.bends.filter(({ code }) => code === station.code);
      const along = request.along.find(({ code }) => code === station.code);
      const bendsDeg = Array.from(
        { length: series.transects - 1 },
        (_, i) => bends.find(({ belt }) => belt === i + 2)?.turnDeg ?? 0,
      );
      return {
        ...{ code: station.code, start: station.position, series, widthM: series.widthM },
        // A hand-picked station may lie on no ground at all: its belts are laid, and nothing of them is inside.
        contains: ground.strata.get(station.stratum)?.index.contains ?? (() => false),
        ...(bends.length === 0 ? {} : { bendsDeg }),
        ...(along === undefined ? {} : { preferredBearingDeg: along.bearingDeg }),
        ...(request.turnDeg === null ? {} : { turnsDeg: turnsUpTo(request.turnDeg) }),
      };
    });
  return new Map(layStations(stations, request.date).stations.map((one) => [one.code, one]));
}

/** Straight first, then half the turn and the whole one, to both sides. */
function turnsUpTo(turnDeg: number): readonly number[] {
  return [0, turnDeg / 2, -turnDeg / 2, turnDeg, -turnDeg];
}

function contentOf(
  { content }: Plan,
  laid: ReadonlyMap<string, LaidStation>,
  made: { readonly request: LayRequest; readonly series: SeriesToLay; readonly tools: PlanTools },
): PlanContent {
  const { request, series, tools } = made;
  const declination = [...laid.values()][0]?.declination;
  return {
    ...content,
    protocol: request.protocol ?? content.protocol,
    stations: content.stations.map((station) => laidStation(station, laid.get(station.code))),
    laid: {
      ...{ on: tools.today, forDate: request.date, by: tools.signature.who },
      ...{
        beltLengthM: series.lengthM,
        beltWidthM: series.widthM,
        gapM: series.gapM,
        belts: series.transects,
      },
      declinationModel: declination?.model ?? 'none',
      ...(declination === undefined
        ? {}
        : { validFromYear: declination.validFromYear, validToYear: declination.validToYear }),
    },
  };
}

function laidStation(station: PlannedStation, laid: LaidStation | undefined): PlannedStation {
  if (laid === undefined) return { ...station, belts: [], shareInside: null };
  const { search, declination } = laid;
  return {
    ...station,
    belts: laid.belts.map((belt) => ({
      ...{ number: belt.transect, start: belt.start, end: belt.end },
      ...{ trueBearingDeg: belt.bearingDeg, magneticBearingDeg: belt.magneticBearingDeg },
    })),
    shareInside: search.best.share,
    laying: {
      ...{ declinationDeg: declination.declinationDeg, slackDeg: search.slackDeg },
      startsInside: search.startsInside,
      turnsDeg: laid.belts.slice(1).map((belt, i) => turned(laid.belts[i]!.bearingDeg, belt.bearingDeg)),
    },
  };
}

/** From one bearing to the next, -180 to 180. */
function turned(fromDeg: number, toDeg: number): number {
  const turn = (((toDeg - fromDeg) % 360) + 540) % 360;
  return turn - 180;
}
