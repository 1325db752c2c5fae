/** Stations of an earlier survey to visit again: drawn at random when they were new, or they cannot speak for a stratum. */

import type { NamedPosition } from '../../planning/draw/draw-request.ts';
import { shuffled } from '../../planning/draw/simple-random.ts';
import { stratumRandom } from '../../planning/draw/stratum-seed.ts';
import {
  type Planned,
  type PlanProblem,
  planned,
  planProblem,
  refused,
} from '../../planning/size/plan-problem.ts';
import { numberProblems } from '../../planning/size/typed-numbers.ts';
import type { Store } from '../../survey/store.ts';
import type { Station } from '../../survey/words.ts';
import { readBookWords, surveysAsked } from '../take-in-hand.ts';
import type { PanelRequest } from './draw-request.ts';
import type { PlanGround } from './plan-ground.ts';
import type { StationsAsked } from './stations-per-stratum.ts';

export type Panel = ReadonlyMap<string, readonly NamedPosition[]>;

export async function panelStations(
  store: Store,
  panel: PanelRequest,
  drawn: { readonly asked: StationsAsked; readonly ground: PlanGround; readonly seed: number },
): Promise<Planned<Panel>> {
  const wrongShare = numberProblems('share', panel.share, { above: 0, atMost: 1 });
  if (wrongShare.length > 0) return refused(wrongShare);
  const words = await readBookWords(store);
  const survey = surveysAsked(words, panel.survey)[0]!;
  const { stations } = await store.surveyRecords(survey.id, { lengths: false });
  const missing = panel.codes.filter((code) => !stations.some((one) => one.code === code));
  if (missing.length > 0) {
    return refused([planProblem('plan-fixed-unknown', { codes: missing.join(', '), survey: survey.name })]);
  }
  const wanted =
    panel.codes.length === 0 ? stations : stations.filter(({ code }) => panel.codes.includes(code));
  const names = new Map(words.strata.map(({ id, name }) => [id, name]));
  const judged = wanted.map((station) => ({ station, ...judge(station, names, drawn) }));
  const problems = leftOut(judged, survey.name);
  const kept = judged.filter(({ reason }) => reason === null);
  if (kept.length === 0)
    return refused([...problems, planProblem('plan-fixed-none', { survey: survey.name })]);
  const taken = new Map(
    drawn.asked.strata.map(({ name, stations: n }) => {
      const own = kept.filter(({ stratum }) => stratum === name).map(({ station }) => positionOf(station));
      const most = Math.min(n, panel.codes.length > 0 ? n : Math.round(n * panel.share));
      const order = shuffled(own.length, stratumRandom(drawn.seed, `${name} again`));
      return [name, order.slice(0, most).map((i) => own[i]!)];
    }),
  );
  const lots = drawn.asked.strata.flatMap(({ name }): readonly PlanProblem[] => {
    const fixed = kept.filter(({ stratum }) => stratum === name).length;
    const stationsTaken = taken.get(name)!.length;
    if (panel.codes.length === 0 || fixed === stationsTaken) return [];
    return [planProblem('plan-fixed-more-than-planned', { stratum: name, fixed, stations: stationsTaken })];
  });
  return planned(taken, [...problems, ...lots]);
}

function positionOf({ code, latitudeDeg, longitudeDeg }: Station): NamedPosition {
  return { code, position: { latitudeDeg: latitudeDeg!, longitudeDeg: longitudeDeg! } };
}

function judge(
  station: Station,
  names: ReadonlyMap<string, string>,
  { asked, ground }: { readonly asked: StationsAsked; readonly ground: PlanGround },
): { readonly stratum: string; readonly reason: string | null } {
  const stratum = names.get(station.stratumId) ?? '';
  const its = ground.strata.get(stratum);
  const because = (reason: string | null) => ({ stratum, reason });
  if (!asked.strata.some(({ name }) => name === stratum))
    return because('in a stratum without planned stations');
  if (station.selection === 'hand-picked') return because('hand-picked, for life');
  if (station.selection === null) return because('nobody wrote down how it was chosen');
  if (station.latitudeDeg === null || station.longitudeDeg === null) return because('without a position');
  return because(its?.index.contains(positionOf(station).position) ? null : 'outside the map of its stratum');
}

function leftOut(
  judged: readonly { readonly station: Station; readonly reason: string | null }[],
  survey: string,
): readonly PlanProblem[] {
  const reasons = [...new Set(judged.flatMap(({ reason }) => reason ?? []))];
  return reasons.map((reason) => {
    const codes = judged.filter((one) => one.reason === reason).map(({ station }) => station.code);
    return planProblem('plan-fixed-left-out', { survey, codes: codes.join(', '), reason });
  });
}
