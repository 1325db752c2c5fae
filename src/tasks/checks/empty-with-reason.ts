import { transectCheck } from './check.ts';

/** A belt marked done and empty beside a reason why something went wrong: a lost sheet read as zero? */
export const check = transectCheck('empty-with-reason', ({ record, status, noneSeen, tallies }) => {
  if (status !== 'done' || record.reason === null) return null;
  for (const { count } of tallies.values()) if (count > 0) return null;
  return noneSeen || tallies.size > 0 ? { value: record.reason, suggestion: 'lost' } : null;
});
