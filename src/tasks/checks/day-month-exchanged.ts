import { stationCheck } from './check.ts';
import { exchangedDay, isDoubtful, surveyDays } from './survey-days.ts';

/** A day outside the survey or in the future that fits with day and month exchanged: 2026-03-09 for 2026-09-03. */
export const check = stationCheck('day-month-exchanged', ({ record }, { inHand, today }) => {
  const days = surveyDays(inHand)!;
  if (!isDoubtful(record.date, days, today)) return null;
  const suggestion = exchangedDay(record.date, days, today);
  return suggestion === null ? null : { value: record.date, suggestion };
});
