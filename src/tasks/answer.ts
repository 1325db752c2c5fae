/**
 * Answers to the questions of the checks. An answer is kept beside its problem and changes no data, with one
 * exception that is itself a command: "none seen" said of blank belts marks them so, in the same act.
 */

import { Failure } from '../survey/failure.ts';
import type { Problem } from '../survey/message.ts';
import { problemKeyOf, problemValueOf } from '../survey/problem-key.ts';
import type { Change, Signature, Store } from '../survey/store.ts';
import type { Answer, Transect } from '../survey/words.ts';
import { type CheckedProblem, checkSurveys } from './check-survey.ts';
import { describePlace, nearestQuestions } from './nearest-questions.ts';
import { readBookWords, surveysAsked } from './take-in-hand.ts';

export interface AnswerRequest {
  readonly code: string;
  readonly survey: string;
  /** Null where the question is not about one. */
  readonly station: string | null;
  readonly transect: string | null;
  readonly swim: number | null;
  readonly species: string | null;
  /** Tells questions of one place apart, such as two strata of a survey; null when there is one. */
  readonly value: string | null;
  readonly answer: string;
  /** When the answer was given that whoever asks had in hand, null while it was open; left out, nothing is compared. */
  readonly base?: string | null | undefined;
}

export interface AnswerTools {
  readonly store: Store;
  readonly signature: Signature;
  readonly newId: () => string;
  /** ISO day. */
  readonly today: string;
}

export interface AnswerResult {
  readonly answered: readonly { readonly problem: Problem; readonly answer: Answer }[];
  /** Belts that were marked "none seen" in the same act. */
  readonly markedNoneSeen: number;
  /** Not null: somebody else answered in between, and nothing was written. */
  readonly theirs: Answer | null;
  readonly dataVersion: string;
}

/** Answers one question, or all blank belts of one station. Throws a Failure when there is no such question. */
export async function answerProblem(request: AnswerRequest, tools: AnswerTools): Promise<AnswerResult> {
  const { store, signature, newId, today } = tools;
  const { checked } = await checkSurveys(store, { survey: request.survey, today });
  const meant = questionsMeant(request, checked);
  const theirs = answeredBetween(request, meant);
  if (theirs !== null) {
    return { answered: [], markedNoneSeen: 0, theirs, dataVersion: await store.dataVersion() };
  }
  const asked = meant.map(({ problem }) => problem);
  const known = new Map((await store.all('answer')).map((answer) => [answer.problemKey, answer]));
  const answered = asked.map((problem) => {
    const before = known.get(problemKeyOf(problem));
    return { problem, answer: answerOf(problem, request.answer, signature, before?.id ?? newId()) };
  });
  const belts = isNoneSeen(request.answer) ? await blankBelts(store, request.survey, asked) : [];
  const changes: Change[] = [
    ...belts.map(
      (belt): Change => ({ kind: 'transect', recordId: belt.id, after: { ...belt, noneSeen: true } }),
    ),
    ...answered.map(({ answer }): Change => ({ kind: 'answer', recordId: answer.id, after: answer })),
  ];
  await store.apply(changes, signature, newId);
  return { answered, markedNoneSeen: belts.length, theirs: null, dataVersion: await store.dataVersion() };
}

function answeredBetween({ base }: AnswerRequest, meant: readonly CheckedProblem[]): Answer | null {
  if (base === undefined) return null;
  return meant.find(({ answer }) => answer !== null && answer.answeredAt !== base)?.answer ?? null;
}

/** In the words of any screen: a recorder writes the language she speaks. */
const noneSeen = new Set(['none seen', 'rien vu']);

function isNoneSeen(answer: string): boolean {
  return noneSeen.has(answer.trim().toLowerCase());
}

function answerOf(problem: Problem, answer: string, { who, why, at }: Signature, id: string): Answer {
  return {
    id,
    problemKey: problemKeyOf(problem),
    code: problem.code,
    value: problemValueOf(problem),
    answer,
    who,
    why,
    answeredAt: at,
  };
}

/** One question, or with blank belts all of one station; a Failure that names the nearest ones otherwise. */
function questionsMeant(
  request: AnswerRequest,
  checked: readonly CheckedProblem[],
): readonly CheckedProblem[] {
  const matching = checked.filter(({ problem }) => matches(problem, request));
  const first = matching[0]?.problem;
  if (first === undefined) throw noSuchQuestion(request, checked);
  if (first.severity === 'stop') throw new Failure('stop-not-answerable', { code: first.code });
  if (first.code === 'station-unresolved' && isNoneSeen(request.answer)) {
    throw new Failure('belts-not-entered', { station: request.station ?? '' });
  }
  const blankOfStation = first.code === 'transect-unresolved' && request.station !== null;
  if (matching.length > 1 && !blankOfStation) {
    const places = matching.slice(0, 8).map(({ problem }) => describePlace(problem));
    throw new Failure('several-questions', {
      code: request.code,
      count: matching.length,
      known: places.join('; '),
    });
  }
  return matching;
}

function matches(problem: Problem, request: AnswerRequest): boolean {
  const { place } = problem;
  const fits = (asked: string | number | null, stands: string | number | undefined) =>
    asked === null || asked === stands;
  return (
    isOfCode(problem, request) &&
    fits(request.station, place.station) &&
    fits(request.transect, place.transect) &&
    fits(request.swim, place.swim ?? 1) &&
    fits(request.species, place.species) &&
    (request.value === null || request.value === problemValueOf(problem))
  );
}

/** A station is unresolved because of its blank belts, so either code finds them. */
function isOfCode({ code, place }: Problem, request: AnswerRequest): boolean {
  if (code === request.code) return true;
  const asksStation = request.code === 'station-unresolved' && request.station !== null;
  return asksStation && code === 'transect-unresolved' && place.station === request.station;
}

function noSuchQuestion(request: AnswerRequest, checked: readonly CheckedProblem[]): Failure {
  const problems = checked.map(({ problem }) => problem);
  const { nearestCode, known } = nearestQuestions(request, problems);
  return new Failure('no-such-question', { code: request.code, nearest: nearestCode ?? '', known });
}

/** The records of the blank belts that the questions are about. */
async function blankBelts(
  store: Store,
  surveyName: string,
  asked: readonly Problem[],
): Promise<readonly Transect[]> {
  const blank = asked.filter(({ code }) => code === 'transect-unresolved');
  if (blank.length === 0) return [];
  const [survey] = surveysAsked(await readBookWords(store), surveyName);
  const { stations, transects } = await store.surveyRecords(survey!.id, { lengths: false });
  const codes = new Map(stations.map((station) => [station.id, station.code]));
  const places = new Set(blank.map(({ place }) => beltKey(place.station!, place.transect!, place.swim ?? 1)));
  return transects.filter((one) => places.has(beltKey(codes.get(one.stationId)!, one.code, one.swim)));
}

function beltKey(station: string, transect: string, swim: number): string {
  return JSON.stringify([station, transect, swim]);
}
