/**
 * Sensitivity and status of every species of the archive (5 000 stations, 30 species) beside the work they cannot do
 * without: `node bench/sensitivity.ts`. Beside sensitivity stand the bare bootstrap picks and sums; beside status the
 * densities alone. The station left out is measured against making every estimate again.
 */

import { join } from 'node:path';
import { Archive } from '../src/estimates/density/archive.ts';
import { DensityEstimator } from '../src/estimates/density/density-estimator.ts';
import { defaultDensitySettings } from '../src/estimates/density/density-settings.ts';
import { stratumSamples } from '../src/estimates/density/stratum-sample.ts';
import { estimateSensitivity } from '../src/estimates/sensitivity/estimate-sensitivity.ts';
import { leaveOneOut } from '../src/estimates/sensitivity/leave-one-out.ts';
import { withoutData } from '../src/estimates/sensitivity/without-data.ts';
import { estimateStatus } from '../src/estimates/status/estimate-status.ts';
import type { ReferenceUsed } from '../src/estimates/status/status-answer.ts';
import { openBook } from '../src/store/book-folder.ts';
import { observeSpecies, type SurveyInHand } from '../src/survey/observation.ts';
import type { Species } from '../src/survey/words.ts';
import { estimateDensity } from '../src/tasks/estimate-density.ts';
import { tellSensitivity } from '../src/tasks/sensitivity.ts';
import { estimateStatus as tellStatus } from '../src/tasks/status.ts';
import { readBookWords, takeInHand } from '../src/tasks/take-in-hand.ts';
import { ownFolder } from '../test/own-folder.ts';
import { fullArchive, writeArchive } from './archive.ts';
import { clocked, inTurns, peakMemoryMb, type Rounds, timed } from './clock.ts';
import { bareDrawing } from './estimate-archive.ts';
import { importArchive } from './import-archive.ts';

const draws = 999;
const settings = { confidence: 0.95, seed: 1, draws };
const reference: ReferenceUsed = {
  content: {
    what: 'reference-density',
    densityPerHa: 30,
    cv: null,
    method: 'belts',
    beltWidthM: null,
    place: null,
    meaning: 'typed',
  },
  source: 'typed for the bench',
  status: 'own',
  note: null,
};

// Made once, as the verbs make them: what they have computed serves every species.
const clumped = new DensityEstimator(defaultDensitySettings);
const plain = new DensityEstimator({ ...defaultDensitySettings, interval: 'lognormal' });
const archive = new Archive();

const work = ownFolder('bench');
const say = (text: string) => process.stdout.write(`${text}\n`);
writeArchive(join(work, 'csv'), fullArchive);
await importArchive(join(work, 'csv'), join(work, 'book'));
const imported = peakMemoryMb();
const store = await openBook(join(work, 'book'));
const words = await readBookWords(store);
const surveys: SurveyInHand[] = [];
for (const survey of words.surveys) {
  surveys.push((await takeInHand(store, words, survey, { lengths: true })).inHand);
}
const pairs = surveys.flatMap((survey) => survey.targets.map((species) => ({ survey, species })));
say(
  `${pairs.length} species in surveys of 250 stations, 5 000 stations in all; medians of 3 rounds in turn, first in brackets.`,
);

const { sensitivity, draw, status, density } = await inTurns(3, {
  draw: clocked(() => bareDrawing(surveys, draws)),
  density: clocked(densities),
  sensitivity: clocked(() => pairs.map((pair) => sensitivityOf(pair))),
  status: clocked(() => pairs.map((pair) => statusOf(pair))),
});
sayRatio(
  'sensitivity: every station left out, 5 other intervals and priors, against the bare bootstrap draws',
  sensitivity,
  draw,
);
sayRatio('the same against the densities alone', sensitivity, density);
sayRatio('status: densities, shares of sizes, chances, against the densities alone', status, density);

const { update, again } = await inTurns(1, {
  update: clocked(() =>
    pairs.slice(0, 30).map(({ survey, species }) => leaveOneOut(samplesOf(survey, species))),
  ),
  again: clocked(() => pairs.slice(0, 30).map(leaveOutAgain)),
});
sayRatio(
  '30 species, 250 stations left out in turn by updates, against the estimate made again (log-normal)',
  update,
  again,
);

// The first of these three makes the priors from 19 earlier surveys; the others find them made.
const plainly = await timed(() =>
  estimateDensity(store, {
    survey: words.surveys.at(-1)!.name,
    species: null,
    settings: defaultDensitySettings,
  }),
);
say(
  `density of the latest survey as the verb does it, the prior from 19 earlier surveys made: ${seconds(plainly.ms)}`,
);
const latest = await timed(() =>
  tellSensitivity(store, { survey: null, species: null, reference, today: '2026-01-01', settings }),
);
say(`sensitivity of the latest survey as the verb does it, the priors known: ${seconds(latest.ms)}`);
const told = await timed(() =>
  tellStatus(store, {
    survey: null,
    species: null,
    by: 'survey',
    reference,
    confidence: 0.95,
    acceptance: null,
  }),
);
say(`status of the latest survey as the verb does it: ${seconds(told.ms)}`);
say(
  `memory at most ${peakMemoryMb()} MB (after the import ${imported} MB), all surveys held with their lengths`,
);
await store.close();

interface Pair {
  readonly survey: SurveyInHand;
  readonly species: Species;
}

function densities() {
  return pairs.map(({ survey, species }) => clumped.answers(survey, species));
}

function sensitivityOf({ survey, species }: Pair) {
  return estimateSensitivity(
    { survey, species, estimator: plain, archive, reference, questioned: [] },
    settings,
  );
}

function statusOf({ survey, species }: Pair) {
  const densitiesOf = clumped.answers(survey, species);
  const limit = { lengthMm: 180, source: 'typed for the bench', status: 'own' } as const;
  return estimateStatus(
    { survey, species, densities: densitiesOf, references: [reference], maturity: [], limit },
    { by: 'survey', confidence: 0.95, accepted: false },
  );
}

function samplesOf(survey: SurveyInHand, species: Species) {
  return stratumSamples(observeSpecies(survey, species), survey.plannedAreaCm2, defaultDensitySettings);
}

function leaveOutAgain({ survey, species }: Pair) {
  return survey.stations.map(({ record }) =>
    plain.answers(withoutData(survey, [{ station: record.code, transect: null }]), species),
  );
}

function sayRatio(what: string, whole: Rounds, bare: Rounds): void {
  const ratio = (whole.medianMs / bare.medianMs).toFixed(2);
  const first = (whole.firstMs / bare.firstMs).toFixed(2);
  say(`${what}: ratio ${ratio} (${first}); ${seconds(whole.medianMs)} against ${seconds(bare.medianMs)}`);
}

function seconds(ms: number): string {
  return `${(ms / 1000).toFixed(2)} s`;
}
