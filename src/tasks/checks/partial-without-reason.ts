import { transectCheck } from './check.ts';

/** A belt cut short because of what was found misleads every density, so the reason is asked for. */
export const check = transectCheck('partial-without-reason', ({ record }) =>
  record.swim === 1 && record.status === 'partial' && record.reason === null
    ? { value: record.lengthM }
    : null,
);
