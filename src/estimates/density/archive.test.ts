import { describe, expect, it } from 'vitest';
import { speciesNamed, surveyOf } from '../../../test/survey-builder.ts';
import { Archive } from './archive.ts';

const sandfish = speciesNamed('sandfish');

function survey(counts: readonly number[]) {
  return surveyOf({
    areasHa: { lagoon: 10 },
    species: ['sandfish'],
    stations: counts.map((sandfish, i) => ({
      code: `S${i}`,
      stratum: 'lagoon',
      belts: [{ lengthM: 40, widthM: 2, counts: { sandfish } }],
    })),
  });
}

/** `surveyOf` gives every survey one name and identity. */
function named(id: string, counts: readonly number[]) {
  const made = survey(counts);
  return { ...made, survey: { ...made.survey, id } };
}

describe('what earlier surveys show', () => {
  const tonight = named('tonight', [1, 2, 0]);

  it('is the same however often and in whatever company a survey was remembered before', () => {
    const [even, clumped] = [named('even', [4, 5, 6, 5, 4]), named('clumped', [0, 0, 90, 0, 1])];
    const priorAfter = (...surveys: ReturnType<typeof named>[]) => {
      const archive = new Archive();
      for (const one of surveys) archive.remember(one);
      return archive.intervalsFor(sandfish, tonight).priors;
    };
    const first = priorAfter(even, clumped);
    priorAfter(clumped);
    priorAfter(even);
    expect(priorAfter(even, clumped)).toEqual(first);
    // Read anew, with other stations in memory that hold the same counts.
    expect(priorAfter(named('even', [4, 5, 6, 5, 4]), named('clumped', [0, 0, 90, 0, 1]))).toEqual(first);
    expect(priorAfter(clumped).negativeBinomialK.median).toBeLessThan(
      priorAfter(even).negativeBinomialK.median,
    );
  });

  it('changes when a species is looked for under another group', () => {
    const limited = surveyOf({
      areasHa: { lagoon: 10 },
      species: ['sandfish', 'trochus'],
      stations: [1, 2, 3, 4].map((n) => ({
        code: `S${n}`,
        stratum: 'lagoon',
        belts: [{ counts: { sandfish: 20 * (n % 2) } }, { scope: ['snails'], counts: { trochus: 1 } }],
      })),
    });
    const earlier = { ...limited, survey: { ...limited.survey, id: 'limited' } };
    const priorOf = (group: string | null) => {
      const archive = new Archive();
      archive.remember(earlier);
      return archive.intervalsFor({ ...sandfish, group }, tonight).priors;
    };
    // As a snail it was looked for on twice the area: the same counts, thinner, and another belief.
    const alone = priorOf(null);
    expect(priorOf('snails')).not.toEqual(alone);
    expect(priorOf(null)).toEqual(alone);
  });
});
