/** The days on which a survey can have been worked, and the one slip that moves a day far: day and month exchanged. */

import type { SurveyInHand } from '../../survey/observation.ts';

export interface SurveyDays {
  readonly first: string;
  readonly last: string;
  readonly from: 'survey' | 'stations';
}

/**
 * The survey's own first and last day; where they are not written, 120 days to either side of the middle day of its
 * stations: one season (common practice). Null without stations.
 */
export function surveyDays(inHand: SurveyInHand): SurveyDays | null {
  let days = remembered.get(inHand);
  if (days === undefined) {
    days = workOut(inHand);
    remembered.set(inHand, days);
  }
  return days;
}

const remembered = new WeakMap<SurveyInHand, SurveyDays | null>();

function workOut({ survey, stations }: SurveyInHand): SurveyDays | null {
  const days = stations.map(({ record }) => record.date).sort();
  const middle = days[Math.floor(days.length / 2)];
  if (middle === undefined) return null;
  return {
    first: survey.starts ?? addDays(survey.ends ?? middle, survey.ends === null ? -seasonDays : -yearDays),
    last: survey.ends ?? addDays(survey.starts ?? middle, survey.starts === null ? seasonDays : yearDays),
    from: survey.starts === null && survey.ends === null ? 'stations' : 'survey',
  };
}

const seasonDays = 120;
const yearDays = 366;

export function isWithin(day: string, { first, last }: SurveyDays): boolean {
  return day >= first && day <= last;
}

/** The day with day and month exchanged when that is another day, lies within the survey and is not in the future. */
export function exchangedDay(day: string, days: SurveyDays, today: string | null): string | null {
  const [year, month, dayOfMonth] = day.split('-');
  if (Number(dayOfMonth) > 12 || month === dayOfMonth) return null;
  const exchanged = `${year}-${dayOfMonth}-${month}`;
  if (today !== null && exchanged > today) return null;
  return isWithin(exchanged, days) ? exchanged : null;
}

/** Whether a day cannot be right as it stands. */
export function isDoubtful(day: string, days: SurveyDays, today: string | null): boolean {
  return !isWithin(day, days) || (today !== null && day > today);
}

function addDays(day: string, n: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) + n * 86_400_000).toISOString().slice(0, 10);
}
