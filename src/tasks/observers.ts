/** How far counts and lengths may be put down to the divers. */

import { type DigitPreference, digitPreference } from '../estimates/digit-preference.ts';
import { type LengthCalibration, lengthCalibration } from '../estimates/observers/length-calibration.ts';
import { type RecordersByStratum, recordersByStratum } from '../estimates/observers/recorders-by-stratum.ts';
import { swimsLeftOut } from '../estimates/observers/swims-left-out.ts';
import { compareSwims, type SwimsCompared } from '../estimates/observers/two-swims.ts';
import { type KnownLength, readKnownLengths } from '../exchange/read-known-lengths.ts';
import type { Problem, Reason } from '../survey/message.ts';
import type { SurveyInHand } from '../survey/observation.ts';
import type { Store } from '../survey/store.ts';
import type { Species } from '../survey/words.ts';
import { lastDigits } from './checks/digit-preference.ts';
import { readBookWords, speciesAsked, surveysAsked, takeInHand } from './take-in-hand.ts';

export interface ObserversRequest {
  /** Null for every survey of the book. */
  readonly survey: string | null;
  /** Null for every target species, and all of them together. */
  readonly species: string | null;
  readonly confidence: number;
}

export interface ObserversAnswer {
  readonly survey: string;
  /** One row per species that both divers saw or looked for; species null is all of them together. */
  readonly swims: readonly (SwimsCompared & { readonly species: string | null })[];
  /** Last digits of lengths by station recorder; recorder '' is nobody named, preference null under 100 lengths. */
  readonly digits: readonly {
    readonly recorder: string;
    readonly lengths: number;
    readonly preference: DigitPreference | null;
  }[];
  readonly strata: RecordersByStratum;
  /** Second swims that are in no comparison, and why. */
  readonly leftOut: readonly Reason[];
}

export interface ObserversResult {
  readonly answers: readonly ObserversAnswer[];
  readonly species: readonly Species[];
  readonly dataVersion: string;
}

export async function compareObservers(store: Store, request: ObserversRequest): Promise<ObserversResult> {
  const words = await readBookWords(store);
  const species = request.species === null ? null : speciesAsked(words, request.species);
  const answers: ObserversAnswer[] = [];
  for (const survey of surveysAsked(words, request.survey)) {
    const { inHand } = await takeInHand(store, words, survey, { lengths: true });
    answers.push({
      survey: survey.name,
      swims: swimsOf(inHand, species, request.confidence),
      digits: digitsOf(inHand),
      strata: recordersByStratum(inHand),
      leftOut: swimsLeftOut(inHand),
    });
  }
  return { answers, species: words.species, dataVersion: await store.dataVersion() };
}

function swimsOf(
  inHand: SurveyInHand,
  species: Species | null,
  confidence: number,
): ObserversAnswer['swims'] {
  const list = species === null ? inHand.targets : [species];
  const together = species === null ? [{ species: null, ...compareSwims(inHand, list, confidence) }] : [];
  const single = list.map((one) => ({ species: one.name, ...compareSwims(inHand, [one], confidence) }));
  return [...together, ...single].filter((one) => one.species === species?.name || one.beltsSwumTwice > 0);
}

function digitsOf(inHand: SurveyInHand): ObserversAnswer['digits'] {
  return [...lastDigits(inHand)]
    .map(([recorder, digits]) => ({
      recorder,
      lengths: digits.reduce((all, n) => all + n, 0),
      preference: digitPreference(digits),
    }))
    .toSorted((a, b) => (a.recorder < b.recorder ? -1 : 1));
}

export interface CalibrationAnswer {
  readonly observer: string;
  readonly pieces: number;
  /** Null under 3 pieces. */
  readonly calibration: LengthCalibration | null;
}

/** Estimated against known lengths, observer by observer; the pass mark is the officer's. */
export function calibrateLengths(
  file: { readonly bytes: Uint8Array; readonly name: string },
  passMarkMm: number | null,
): { readonly answers: readonly CalibrationAnswer[]; readonly problems: readonly Problem[] } {
  const { value, problems } = readKnownLengths(file.bytes, file.name);
  const byObserver = new Map<string, KnownLength[]>();
  for (const piece of value)
    byObserver.set(piece.observer, [...(byObserver.get(piece.observer) ?? []), piece]);
  const answers = [...byObserver].map(([observer, pieces]) => ({
    observer,
    pieces: pieces.length,
    calibration: lengthCalibration(pieces, passMarkMm),
  }));
  return { answers, problems };
}
