import { stationCheck } from './check.ts';
import { exchangedDay, isWithin, surveyDays } from './survey-days.ts';

/**
 * A day before or after the survey, unless exchanging day and month explains it. Where the survey's days are not
 * written only another year is asked about: some programmes work two seasons under one name.
 */
export const check = stationCheck('date-outside-survey', ({ record }, { inHand, today }) => {
  const days = surveyDays(inHand)!;
  if (isWithin(record.date, days) || (today !== null && record.date > today)) return null;
  if (exchangedDay(record.date, days, today) !== null) return null;
  if (days.from === 'stations' && isWithinAYear(record.date, days)) return null;
  const otherYear = days.first.slice(0, 4) + record.date.slice(4);
  return {
    value: record.date,
    parameters: { first: days.first, last: days.last },
    suggestion: isWithin(otherYear, days) ? otherYear : null,
  };
});

/** The season reaches 120 days to either side of its middle; 245 more make a year. */
function isWithinAYear(
  day: string,
  { first, last }: { readonly first: string; readonly last: string },
): boolean {
  const leewayMs = 245 * 86_400_000;
  return Date.parse(day) >= Date.parse(first) - leewayMs && Date.parse(day) <= Date.parse(last) + leewayMs;
}
