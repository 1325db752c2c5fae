import { digitPreference } from '../../estimates/digit-preference.ts';
import type { SurveyInHand } from '../../survey/observation.ts';
import { problemOf } from '../../survey/problem-of.ts';
import { checkOf } from './check.ts';

/** Lengths rounded to 0 and 5, recorder by recorder; those of unnamed recorders together. */
export const check = checkOf('digit-preference', ({ inHand }) => {
  const found = [];
  for (const [recorder, digits] of lastDigits(inHand)) {
    const preference = digitPreference(digits);
    if (preference === null || !preference.isPreferred) continue;
    const percent = Math.round(100 * preference.shareOfZeroAndFive);
    const parameters = { recorder, lengths: preference.measured, chiSquare: preference.chiSquare };
    found.push(
      problemOf('digit-preference', { survey: inHand.survey.name }, { value: `${percent} %`, parameters }),
    );
  }
  return found;
});

/** How many lengths end in 0 to 9, by recorder ('' where nobody is named), in the unit the survey was measured in. */
export function lastDigits(inHand: SurveyInHand): ReadonlyMap<string, number[]> {
  const unitMm = unitOf(inHand);
  const byRecorder = new Map<string, number[]>();
  for (const { record, transects } of inHand.stations) {
    const recorder = record.recorder ?? '';
    const digits = byRecorder.get(recorder) ?? Array<number>(10).fill(0);
    byRecorder.set(recorder, digits);
    for (const { tallies } of transects) {
      for (const { lengths } of tallies.values()) {
        for (const { lengthMm, n } of lengths) digits[Math.round(lengthMm / unitMm) % 10]! += n;
      }
    }
  }
  return byRecorder;
}

/** Whole centimetres throughout are a coarse rule, not a preference: then the last digit is that of the centimetres. */
function unitOf({ protocol, stations }: SurveyInHand): 1 | 10 {
  if (protocol?.lengthUnit === 'cm') return 10;
  for (const { transects } of stations) {
    for (const { tallies } of transects) {
      for (const { lengths } of tallies.values()) {
        for (const { lengthMm } of lengths) if (lengthMm % 10 !== 0) return 1;
      }
    }
  }
  return 10;
}
