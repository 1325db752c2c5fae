import { stationCheck } from './check.ts';
import { longestMin, workHours } from './work-hours.ts';

/** A station that ends before it starts, and no work past midnight explains it. */
export const check = stationCheck('ends-before-it-starts', ({ record }) => {
  const { timeStart, timeEnd } = record;
  if (timeStart === null || timeEnd === null || workHours(record) !== null) return null;
  return { value: `${timeStart} to ${timeEnd}`, suggestion: exchanged(timeStart, timeEnd) };
});

/** 12-hour habits: 02:10 for 14:10 after a start at 13:20; else start and end exchanged. */
function exchanged(timeStart: string, timeEnd: string): string | null {
  const hour = Number(timeEnd.slice(0, 2));
  const afternoon = `${String(hour + 12)}${timeEnd.slice(2)}`;
  if (hour < 12 && isUsual({ timeStart, timeEnd: afternoon })) return `${timeStart} to ${afternoon}`;
  const turned = { timeStart: timeEnd, timeEnd: timeStart };
  return timeStart !== timeEnd && isUsual(turned) ? `${timeEnd} to ${timeStart}` : null;
}

function isUsual(times: { readonly timeStart: string; readonly timeEnd: string }): boolean {
  const hours = workHours(times);
  return hours !== null && hours.endMin - hours.startMin <= longestMin;
}
