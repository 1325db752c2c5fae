/** The checks that one sheet alone can answer, asked while it is typed. The evening's round asks the others. */

import type { Problem } from '../../survey/message.ts';
import { joinSurvey } from '../../survey/survey-in-hand.ts';
import type { Species } from '../../survey/words.ts';
import type { Check } from '../checks/check.ts';
import { check as countOnLostTransect } from '../checks/count-on-lost-transect.ts';
import { check as dateInFuture } from '../checks/date-in-future.ts';
import { check as dateOutsideSurvey } from '../checks/date-outside-survey.ts';
import { check as doneButShort } from '../checks/done-but-short.ts';
import { check as endsBeforeItStarts } from '../checks/ends-before-it-starts.ts';
import type { CheckGround } from '../checks/ground.ts';
import { check as lengthOutsideRange } from '../checks/length-outside-range.ts';
import { check as lengthUnitSlip } from '../checks/length-unit-slip.ts';
import { check as lostButEmpty } from '../checks/lost-but-empty.ts';
import { check as moreLengthsThanAnimals } from '../checks/more-lengths-than-animals.ts';
import { check as noneSeenButCounted } from '../checks/none-seen-but-counted.ts';
import { check as partialWithoutReason } from '../checks/partial-without-reason.ts';
import type { Sheet } from './sheet-schemas.ts';
import type { SurveyWords } from './survey-schemas.ts';

const checks: readonly Check[] = [
  dateInFuture,
  dateOutsideSurvey,
  endsBeforeItStarts,
  partialWithoutReason,
  doneButShort,
  countOnLostTransect,
  lostButEmpty,
  noneSeenButCounted,
  moreLengthsThanAnimals,
  lengthUnitSlip,
  lengthOutsideRange,
];

/** Of the map and the plans these checks ask nothing; leaving them out keeps geodesy off the typing screen. */
const noGround: CheckGround = { maps: [], plans: [], handPicked: [] };

/** In the order of the checks; each says by its place to which belt it belongs. `today` is null for an invented book. */
export function sheetQuestions(sheet: Sheet, words: SurveyWords, today: string | null): readonly Problem[] {
  if (!words.strata.some((stratum) => stratum.id === sheet.station.stratumId)) return [];
  const species = new Map(words.species.map((one) => [one.id, one]));
  const targets = words.targets
    .map((id) => species.get(id))
    .filter((one): one is Species => one !== undefined);
  const { survey, protocol, strata } = words;
  const rows = { stations: [sheet.station], transects: sheet.transects, tallies: sheet.tallies };
  const inHand = joinSurvey({ survey, protocol, strata, targets }, rows);
  const targetList = { species: targets, madeFrom: words.targetsMadeFrom, undeclared: [] };
  const context = { inHand, targetList, species, today, ground: noGround };
  return checks.flatMap((check) => check.run(context));
}
