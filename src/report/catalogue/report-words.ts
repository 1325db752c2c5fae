/** The fixed words of the report, by language. Sentence case; every number has its unit and its n. */

import { reportWordsFr } from './french/report-words.ts';
import type { Language } from './language.ts';

const english = {
  invented: 'All of it is invented: places, animals, counts and people.',
  asked: 'What was asked',
  noPurpose: 'Nobody wrote down what this survey is to decide.',
  answer: 'The answer',
  where: 'Where',
  density: 'Density by species and stratum',
  surveys: 'From survey to survey',
  surveysCaution:
    'A change is not read from two bands: bands that overlap do not prove that nothing changed, and the difference has an estimate and an interval of its own.',
  timeExplained:
    'Each band stands at the days of its survey. The darker it is, the more the counts speak for that density; the thick tick is the estimate, the hair lines are the ends of the interval. Where none was recorded the band fades from zero, and the dotted hair line is the bound if the animals are scattered. The axis runs evenly at its foot, so that zero has a place, and further up each equal step multiplies. A thin line joins estimates that were counted alike, to lead the eye; it is not the trend.',
  strips: 'The stations, belt by belt',
  stripsExplained:
    'Each station is drawn as its own line of belts, to scale along the line with its gaps; the width of a belt is not to scale. The number below a belt is its animals, all species together.',
  sizes: 'Sizes',
  sizesExplained:
    'Each measured animal stands for the counted animals of its belt, so that dense belts, where only the first animals are measured, weigh by their counts. A species with fewer than 5 measured animals stands in the table alone.',
  noSizes: 'No species was measured.',
  effort: 'What was done',
  leftOut: 'What was left out, and why',
  nothingLeftOut: 'Nothing was left out: every station and belt on record is in the counts and in the area.',
  questions: 'Questions still open',
  noQuestions: 'None: every question of the checks has been answered.',
  methods: 'How it was worked out',
  caveatHead: 'What this survey can and cannot say',
  caveat: [
    'It describes the strata that were sampled, on the days they were sampled, and the animals that divers can see. It says nothing about habitat that was not sampled: do not stretch these densities over other reefs or other depths.',
    'A species that was not recorded may still be there, below the bound that stands with it. Buried and hidden animals are not counted.',
  ],
  severities: { stop: 'Stops the answer', explain: 'Needs an explanation', note: 'Good to know' },
  targetsListed: 'The list of species that the divers looked for was given with the survey',
  targetsAssumed:
    'No list of species was given with the survey: every species of the protocol and every species ever seen in this book under it is taken as looked for',
} as const;

type Words<T> = { readonly [K in keyof T]: T[K] extends string ? string : Words<T[K]> };
export type ReportWords = Words<typeof english>;

const words: Readonly<Record<Language, ReportWords>> = { en: english, fr: reportWordsFr };

export function reportWords(language: Language): ReportWords {
  return words[language];
}
