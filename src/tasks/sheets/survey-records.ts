/** Gathers what a screen needs to work out the numbers and questions of one survey by itself. */

import type { StationWithTransects, SurveyInHand, TransectWithTallies } from '../../survey/observation.ts';
import type { Store } from '../../survey/store.ts';
import type { Survey } from '../../survey/words.ts';
import { type BookWords, readBookWords, takeInHand } from '../take-in-hand.ts';
import type { EarlierBelt, EarlierSurvey, SurveyRecords } from './survey-records-schemas.ts';

/** Requires a survey of the book. One pass over it, lengths and all, and one over each earlier survey of its protocol. */
export async function surveyRecords(store: Store, surveyId: string): Promise<SurveyRecords> {
  const words = await readBookWords(store);
  const at = words.surveys.findIndex((one) => one.id === surveyId);
  const survey = words.surveys[at];
  if (survey === undefined) throw new Error('surveyRecords requires a survey of the book');
  const { stations, transects, tallies } = await store.surveyRecords(surveyId, { lengths: true });
  const everywhere = await store.all('station');
  const elsewhere = everywhere.filter((one) => one.surveyId !== surveyId);
  return {
    dataVersion: await store.dataVersion(),
    surveyId,
    book: await store.info(),
    strata: [...words.strata],
    protocols: [...words.protocols],
    species: [...words.species],
    surveys: [...words.surveys],
    targets: [...words.targets],
    limits: [...words.limits],
    answers: [...(await store.all('answer'))],
    maps: [...(await store.all('mapArea'))],
    plans: [...(await store.all('plan'))],
    handPicked: elsewhere.filter((one) => one.selection === 'hand-picked'),
    seenElsewhere: [...words.seen]
      .filter(([id]) => id !== surveyId)
      .map(([id, seen]) => ({ surveyId: id, speciesIds: [...seen] })),
    stations: [...stations],
    transects: [...transects],
    tallies: [...tallies],
    earlier: await earlierSurveys(store, words, { before: words.surveys.slice(0, at), survey }),
  };
}

/** Clumping is learned from the surveys before this one that were worked in the same way. */
async function earlierSurveys(
  store: Store,
  words: BookWords,
  { before, survey }: { readonly before: readonly Survey[]; readonly survey: Survey },
): Promise<EarlierSurvey[]> {
  const places = new Map(words.species.map((one, place) => [one.id, place]));
  const earlier: EarlierSurvey[] = [];
  for (const one of before.filter(({ protocolId }) => protocolId === survey.protocolId)) {
    const { inHand } = await takeInHand(store, words, one, { lengths: false });
    earlier.push(earlierSurvey(inHand, places));
  }
  return earlier;
}

function earlierSurvey(
  { survey, stations }: SurveyInHand,
  places: ReadonlyMap<string, number>,
): EarlierSurvey {
  return {
    surveyId: survey.id,
    stations: stations.map(({ stratum, transects, laterSwims }: StationWithTransects) => ({
      stratumId: stratum.id,
      belts: [...transects, ...laterSwims].map((belt) => earlierBelt(belt, places)),
    })),
  };
}

function earlierBelt(
  { record, tallies }: TransectWithTallies,
  places: ReadonlyMap<string, number>,
): EarlierBelt {
  const { status, swim, scope, noneSeen, lengthM, widthM } = record;
  return {
    status,
    ...(swim === 1 ? {} : { swim }),
    ...(scope.length === 0 ? {} : { scope }),
    ...(noneSeen ? { noneSeen } : {}),
    lengthM,
    widthM,
    counts: [...tallies].flatMap(([speciesId, { count }]) => [places.get(speciesId)!, count]),
  };
}
