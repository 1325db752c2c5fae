import { transectCheck } from './check.ts';

/** Shares of the bottom that do not make a whole. Five percent are let pass: covers are looks, not measures. */
export const check = transectCheck('cover-not-whole', ({ record }) => {
  if (record.cover.length === 0) return null;
  let percent = 0;
  for (const one of record.cover) percent += one.percent;
  return Math.abs(percent - 100) <= 5 ? null : { value: Number(percent.toFixed(1)) };
});
