import { tallyCheck } from './tally-check.ts';

/** An import refuses more lengths than animals; a later correction of a count can make it. */
export const check = tallyCheck('more-lengths-than-animals', ({ count, lengths }) => {
  let measured = 0;
  for (const { n } of lengths) measured += n;
  return measured <= count ? null : { value: measured, parameters: { measured, count } };
});
