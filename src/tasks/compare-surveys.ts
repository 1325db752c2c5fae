/** Change between two surveys of the book: first whether they can be compared, then species by species. */

import type { ChangeAnswer } from '../estimates/change/change-answer.ts';
import { type Comparability, comparabilityOf } from '../estimates/change/comparability.ts';
import { type ChangeSettings, estimateChange, notCompared } from '../estimates/change/estimate-change.ts';
import { Archive } from '../estimates/density/archive.ts';
import type { Acceptance } from '../estimates/density/density-settings.ts';
import { Failure } from '../survey/failure.ts';
import type { Problem } from '../survey/message.ts';
import type { SurveyInHand } from '../survey/observation.ts';
import type { Store } from '../survey/store.ts';
import type { Species, Survey } from '../survey/words.ts';
import { type ControlAnswer, type ControlAsked, controlAnswer, requirePlace } from './change/control.ts';
import { falseAlarmByDesign } from './change/false-alarm.ts';
import { askedOf } from './check-survey.ts';
import { type BookWords, readBookWords, speciesAsked, surveysAsked, takeInHand } from './take-in-hand.ts';

export interface CompareRequest {
  /** Null for the survey before `to`. */
  readonly from: string | null;
  /** Null for the latest survey of the book. */
  readonly to: string | null;
  readonly species: string | null;
  readonly settings: Omit<ChangeSettings, 'accepted'>;
  /** Two places, one of which was closed or opened; null when none is asked about. */
  readonly control: ControlAsked | null;
  readonly acceptance: Acceptance | null;
}

export interface CompareResult {
  readonly from: string;
  readonly to: string;
  readonly comparability: Comparability;
  readonly answers: readonly ChangeAnswer[];
  readonly controls: readonly ControlAnswer[];
  readonly problems: readonly Problem[];
  readonly species: readonly Species[];
  readonly dataVersion: string;
}

/** Throws a Failure when the book has one survey only, the same survey is named twice, or the later one first. */
export async function compareSurveys(store: Store, request: CompareRequest): Promise<CompareResult> {
  const words = await readBookWords(store);
  const { from, to } = twoSurveys(words, request);
  const archive = new Archive();
  for (const earlier of words.surveys.slice(0, words.surveys.indexOf(from))) {
    archive.remember((await takeInHand(store, words, earlier, { lengths: false })).inHand);
  }
  const first = await takeInHand(store, words, from, { lengths: false });
  const second = await takeInHand(store, words, to, { lengths: false });
  const comparability = comparabilityOf(first.inHand, second.inHand);
  const species = request.species === null ? null : speciesAsked(words, request.species);
  const asked = species === null ? second.inHand.targets : [species];
  const settings = { ...request.settings, accepted: request.acceptance !== null };
  const answers = asked.flatMap((one) => {
    const two = { from: first.inHand, to: second.inHand, species: one };
    const held = heldFor(two, comparability, request.acceptance);
    if (held !== null) return [notCompared(two, held)];
    const intervals = archive.intervalsFor(one, first.inHand);
    return estimateChange({ ...two, intervals }, settings).map((answer) => ({
      ...answer,
      falseAlarmByDesign: falseAlarmByDesign(two, answer, settings),
    }));
  });
  const { control } = request;
  const surveys = [first.inHand, second.inHand];
  if (control !== null) for (const place of [control.impact, control.control]) requirePlace(surveys, place);
  const controls = asked.flatMap((one) => {
    const two = { from: first.inHand, to: second.inHand, species: one };
    const isHeld = heldFor(two, comparability, request.acceptance) !== null;
    if (control === null || isHeld) return [];
    return controlAnswer(two, control, settings.confidence) ?? [];
  });
  return {
    from: from.name,
    to: to.name,
    comparability,
    answers,
    controls,
    problems: [...askedOf(first), ...askedOf(second)],
    species: words.species,
    dataVersion: await store.dataVersion(),
  };
}

function twoSurveys(words: BookWords, request: CompareRequest): { from: Survey; to: Survey } {
  const to = surveysAsked(words, request.to).at(-1)!;
  const before = words.surveys[words.surveys.indexOf(to) - 1];
  const from = request.from === null ? before : surveysAsked(words, request.from)[0]!;
  if (from === undefined) throw new Failure('one-survey-only', { survey: to.name });
  if (from.id === to.id) throw new Failure('same-survey-twice', { survey: to.name });
  if (from.starts !== null && to.starts !== null && from.starts > to.starts) {
    throw new Failure('surveys-backwards', { earlier: to.name, later: from.name });
  }
  return { from, to };
}

interface TwoInHand {
  readonly from: SurveyInHand;
  readonly to: SurveyInHand;
  readonly species: Species;
}

/** A species that one of them did not look for, or two surveys that cannot be compared and for which nobody answers. */
function heldFor(
  { from, to, species }: TwoInHand,
  comparability: Comparability,
  accepted: Acceptance | null,
) {
  const missing = [from, to].find((survey) => !survey.targets.some((one) => one.id === species.id));
  if (missing !== undefined) {
    const parameters = { species: species.name, survey: missing.survey.name };
    return { code: 'change-not-a-target', parameters } as const;
  }
  const held = comparability.aspects.find((one) => one.verdict === 'held');
  return accepted === null ? (held?.reason ?? null) : null;
}
