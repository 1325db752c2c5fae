/** A plan of the book, and what became of it once stations of its survey are in the book. */

import { type PlanAgainstSurvey, planAgainstSurvey } from '../../planning/draw/plan-against-survey.ts';
import type { Store } from '../../survey/store.ts';
import type { Plan, Survey } from '../../survey/words.ts';
import { planNamed } from './plan-named.ts';

export interface PlanShown {
  readonly plan: Plan;
  /** Null while no station of the survey is in the book. */
  readonly against: PlanAgainstSurvey | null;
  readonly dataVersion: string;
}

export async function planShown(store: Store, name: string): Promise<PlanShown> {
  const plan = await planNamed(store, name);
  // A plan that names no survey is for the one of its own name.
  const wanted = plan.content.survey ?? plan.name;
  const survey = (await store.all('survey')).find((one) => one.name === wanted);
  const stations =
    survey === undefined ? [] : (await store.surveyRecords(survey.id, { lengths: false })).stations;
  const against = stations.length === 0 ? null : planAgainstSurvey(plan.content, stations);
  return { plan, against, dataVersion: await store.dataVersion() };
}

/** The latest plan of a survey with what became of it, for a report; nothing where there is none. */
export async function planOfSurvey(
  store: Store,
  survey: Survey,
): Promise<{ readonly plan?: { readonly name: string; readonly against: PlanAgainstSurvey } }> {
  const plans = (await store.all('plan')).filter(
    ({ name, content }) => (content.survey ?? name) === survey.name,
  );
  const latest = plans.toSorted((a, b) => (a.content.drawnOn < b.content.drawnOn ? -1 : 1)).at(-1);
  if (latest === undefined) return {};
  const { stations } = await store.surveyRecords(survey.id, { lengths: false });
  return { plan: { name: latest.name, against: planAgainstSurvey(latest.content, stations) } };
}
