/** What is in neither the count nor the area of an answer, named one by one. */

import { classifyTransect, type StationObservation } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import type { LeftOut } from '../answers.ts';
import type { Acceptance } from './density-settings.ts';
import type { ScopeInHand } from './scopes.ts';

export function leftOutOf(
  scope: ScopeInHand,
  species: Species,
  acceptance: Acceptance | null,
): readonly LeftOut[] {
  return scope.parts.flatMap(({ sample }) =>
    sample.all.filter(scope.belongs).flatMap((observation) => leftOutAt(observation, species, acceptance)),
  );
}

function leftOutAt(
  observation: StationObservation,
  species: Species,
  acceptance: Acceptance | null,
): LeftOut[] {
  const station = observation.station.record.code;
  if (observation.state === 'unresolved') {
    if (acceptance === null) return [];
    const parameters = { station, who: acceptance.who, why: acceptance.why };
    return [{ station, transect: null, reason: { code: 'left-out-accepted', parameters } }];
  }
  const found: LeftOut[] = [];
  if (observation.state === 'lost') {
    found.push({
      station,
      transect: null,
      reason: { code: 'left-out-station-lost', parameters: { station } },
    });
  }
  for (const transect of observation.station.transects) {
    const state = classifyTransect(transect, species);
    const code = transect.record.code;
    if (state === 'lost') {
      const parameters = { station, transect: code, why: transect.record.reason ?? transect.status };
      found.push({ station, transect: code, reason: { code: 'left-out-lost', parameters } });
    } else if (state === 'not looked for') {
      const parameters = { station, transect: code };
      found.push({ station, transect: code, reason: { code: 'left-out-not-looked-for', parameters } });
    }
  }
  for (const { record } of observation.station.laterSwims) {
    const parameters = { station, transect: record.code, swim: record.swim };
    found.push({ station, transect: record.code, reason: { code: 'left-out-later-swim', parameters } });
  }
  return found;
}
