/** Every check, in the order in which people are asked. A new check is one file and one line here. */

import { check as beltLengthUnusual } from './belt-length-unusual.ts';
import { check as beltWidthUnusual } from './belt-width-unusual.ts';
import { check as boatTooFast } from './boat-too-fast.ts';
import type { Check } from './check.ts';
import { check as countOnLostTransect } from './count-on-lost-transect.ts';
import { check as countOutlier } from './count-outlier.ts';
import { check as countStoppedAtCap } from './count-stopped-at-cap.ts';
import { check as countedButNoTarget } from './counted-but-no-target.ts';
import { check as coverNotWhole } from './cover-not-whole.ts';
import { check as dateInFuture } from './date-in-future.ts';
import { check as dateOutsideSurvey } from './date-outside-survey.ts';
import { check as dayMonthExchanged } from './day-month-exchanged.ts';
import { check as depthOutsideStratum } from './depth-outside-stratum.ts';
import { check as digitPreference } from './digit-preference.ts';
import { check as digitsExchanged } from './digits-exchanged.ts';
import { check as doneButShort } from './done-but-short.ts';
import { check as emptyWithReason } from './empty-with-reason.ts';
import { check as endFarFromStart } from './end-far-from-start.ts';
import { check as endsBeforeItStarts } from './ends-before-it-starts.ts';
import { check as farFromOthers } from './far-from-others.ts';
import { check as farFromPlan } from './far-from-plan.ts';
import { check as fewerTransectsThanPlanned } from './fewer-transects-than-planned.ts';
import { check as handPickedMarkedRandom } from './hand-picked-marked-random.ts';
import { check as hemisphereMissing } from './hemisphere-missing.ts';
import { check as latitudeLongitudeExchanged } from './latitude-longitude-exchanged.ts';
import { check as lengthOutsideRange } from './length-outside-range.ts';
import { check as lengthUnitSlip } from './length-unit-slip.ts';
import { check as loneStationInStratum } from './lone-station-in-stratum.ts';
import { check as lostButEmpty } from './lost-but-empty.ts';
import { check as minutesForSeconds } from './minutes-for-seconds.ts';
import { check as moreLengthsThanAnimals } from './more-lengths-than-animals.ts';
import { check as moreTransectsThanPlanned } from './more-transects-than-planned.ts';
import { check as noneSeenButCounted } from './none-seen-but-counted.ts';
import { check as partialWithoutReason } from './partial-without-reason.ts';
import { check as plannedNotVisited } from './planned-not-visited.ts';
import { check as positionSameAsPlan } from './position-same-as-plan.ts';
import { check as randomWithoutPlan } from './random-without-plan.ts';
import { check as selectionMixed } from './selection-mixed.ts';
import { check as selectionUnknown } from './selection-unknown.ts';
import { check as speciesOutsideDepth } from './species-outside-depth.ts';
import { check as speciesOutsideHabitat } from './species-outside-habitat.ts';
import { check as stationAtBorder } from './station-at-border.ts';
import { check as stationNotInPlan } from './station-not-in-plan.ts';
import { check as stationOnMask } from './station-on-mask.ts';
import { check as stationOutsideStratum } from './station-outside-stratum.ts';
import { check as stationOutsideZone } from './station-outside-zone.ts';
import { check as stationSmallArea } from './station-small-area.ts';
import { check as stationUnresolved } from './station-unresolved.ts';
import { check as stationsAlike } from './stations-alike.ts';
import { check as stratumAreaMissing } from './stratum-area-missing.ts';
import { check as targetsAssumed } from './targets-assumed.ts';
import { check as transectEnteredTwice } from './transect-entered-twice.ts';
import { check as transectUnresolved } from './transect-unresolved.ts';
import { check as twoPlacesAtOnce } from './two-places-at-once.ts';

/** What an estimate needs to have answered; none of these looks at a length. */
export const estimateChecks: readonly Check[] = [
  stationUnresolved,
  transectUnresolved,
  partialWithoutReason,
  stationSmallArea,
  stratumAreaMissing,
  loneStationInStratum,
  selectionMixed,
  selectionUnknown,
  countedButNoTarget,
  targetsAssumed,
];

/** The whole evening's round. Lengths must be at hand. */
export const allChecks: readonly Check[] = [
  ...estimateChecks,
  countOnLostTransect,
  noneSeenButCounted,
  moreLengthsThanAnimals,
  lostButEmpty,
  emptyWithReason,
  transectEnteredTwice,
  stationsAlike,
  twoPlacesAtOnce,
  endsBeforeItStarts,
  dayMonthExchanged,
  dateInFuture,
  dateOutsideSurvey,
  hemisphereMissing,
  latitudeLongitudeExchanged,
  digitsExchanged,
  minutesForSeconds,
  farFromPlan,
  farFromOthers,
  positionSameAsPlan,
  stationOutsideStratum,
  stationOutsideZone,
  stationOnMask,
  stationAtBorder,
  endFarFromStart,
  boatTooFast,
  randomWithoutPlan,
  stationNotInPlan,
  plannedNotVisited,
  handPickedMarkedRandom,
  beltLengthUnusual,
  beltWidthUnusual,
  doneButShort,
  moreTransectsThanPlanned,
  fewerTransectsThanPlanned,
  depthOutsideStratum,
  coverNotWhole,
  speciesOutsideDepth,
  speciesOutsideHabitat,
  lengthUnitSlip,
  lengthOutsideRange,
  countStoppedAtCap,
  countOutlier,
  digitPreference,
];
