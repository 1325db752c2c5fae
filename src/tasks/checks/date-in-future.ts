import { stationCheck } from './check.ts';
import { exchangedDay, surveyDays } from './survey-days.ts';

/** A day that has not come yet, unless exchanging day and month explains it. */
export const check = stationCheck('date-in-future', ({ record }, { inHand, today }) => {
  if (today === null || record.date <= today) return null;
  if (exchangedDay(record.date, surveyDays(inHand)!, today) !== null) return null;
  return { value: record.date, parameters: { today } };
});
