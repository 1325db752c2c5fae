import { problemOf } from '../../survey/problem-of.ts';
import { type CheckContext, checkOf } from './check.ts';
import { type InPlan, plannedFor } from './ground.ts';

/** Planned stations that nobody went to and no spare stands for. While the days still run it is too early to say. */
export const check = checkOf('planned-not-visited', (context) => {
  const { inHand, ground } = context;
  const inPlans = [...(plannedFor(inHand.survey.name, ground)?.values() ?? [])];
  const planned = inPlans.filter(({ station }) => station.role === 'planned');
  const visited = new Set(inHand.stations.map(({ record }) => record.code));
  const missed = planned.filter(({ station }) => !visited.has(station.code));
  if (missed.length === 0 || visited.size === 0) return [];
  const isMostlyDone = (planned.length - missed.length) * 2 > planned.length;
  if (!isMostlyDone && !isOver(context)) return [];
  return [...new Set(missed.map(({ plan }) => plan))].map((plan) =>
    problemOf(
      'planned-not-visited',
      { survey: inHand.survey.name },
      {
        value: codesOf(missed, plan).join(', '),
        parameters: {
          plan,
          missed: codesOf(missed, plan).length,
          of: codesOf(planned, plan).length,
        },
      },
    ),
  );
});

function isOver({ inHand: { survey }, today }: CheckContext): boolean {
  return survey.ends !== null && today !== null && today > survey.ends;
}

function codesOf(stations: readonly InPlan[], plan: string): readonly string[] {
  return stations.filter((one) => one.plan === plan).map(({ station }) => station.code);
}
