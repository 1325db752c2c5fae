/** Who worked where: stations by recorder and stratum, and whether the two can be told apart. */

import type { Reason } from '../../survey/message.ts';
import type { SurveyInHand } from '../../survey/observation.ts';

export interface RecordersByStratum {
  readonly strata: readonly string[];
  readonly recorders: readonly {
    readonly recorder: string;
    /** Stations in each stratum, in the order of `strata`. */
    readonly stations: readonly number[];
  }[];
  readonly cautions: readonly Reason[];
}

/**
 * Stations by recorder and stratum, of those where at least one belt was searched.
 *
 * A stratum that one recorder did alone, while others worked elsewhere, differs by the place and by the person, and
 * nothing in the counts can part the two. With one recorder in the whole survey strata compare, since the person
 * is the same everywhere.
 */
export function recordersByStratum(inHand: SurveyInHand): RecordersByStratum {
  const worked = inHand.stations.filter(({ transects }) =>
    transects.some(({ status }) => status === 'done' || status === 'partial'),
  );
  const strata = [...new Set(worked.map(({ stratum }) => stratum.name))].sort();
  const names = [...new Set(worked.map(({ record }) => record.recorder))]
    .filter((one) => one !== null)
    .sort();
  const recorders = names.map((recorder) => ({
    recorder,
    stations: strata.map(
      (name) =>
        worked.filter(({ record, stratum }) => record.recorder === recorder && stratum.name === name).length,
    ),
  }));
  const unnamed = worked.filter(({ record }) => record.recorder === null).length;
  return {
    strata,
    recorders,
    cautions: [
      ...(names.length > 1 ? confounded(strata, recorders, worked) : []),
      ...(unnamed === 0 ? [] : [{ code: 'observers-unnamed' as const, parameters: { stations: unnamed } }]),
    ],
  };
}

function confounded(
  strata: readonly string[],
  recorders: RecordersByStratum['recorders'],
  worked: SurveyInHand['stations'],
): readonly Reason[] {
  const alone = strata.flatMap((stratum, i): Reason[] => {
    const there = recorders.filter(({ stations }) => stations[i]! > 0);
    const all = worked.filter((one) => one.stratum.name === stratum).length;
    const only = there[0];
    // With a station of nobody's the stratum may have had a second recorder.
    if (there.length !== 1 || only === undefined || only.stations[i] !== all) return [];
    return [
      { code: 'observers-one-in-stratum', parameters: { observer: only.recorder, stratum, stations: all } },
    ];
  });
  const empty = recorders.reduce((all, { stations }) => all + stations.filter((n) => n === 0).length, 0);
  const cells = strata.length * recorders.length;
  if (empty === 0) return alone;
  return [...alone, { code: 'observers-holes', parameters: { empty, cells } }];
}
