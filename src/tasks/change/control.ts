/** Did one place change more than another? Before, after, impact, control, from the stations of two surveys. */

import { type BeforeAfterControl, beforeAfterControl } from '../../estimates/change/before-after-control.ts';
import { stratumSamples } from '../../estimates/density/stratum-sample.ts';
import { Failure } from '../../survey/failure.ts';
import { observeSpecies, type SurveyInHand } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';

export interface ControlAsked {
  /** Name of a zone or a stratum that was to change (closed, opened). */
  readonly impact: string;
  readonly control: string;
}

export interface ControlAnswer extends ControlAsked, BeforeAfterControl {
  readonly species: string;
  readonly stations: readonly [
    impactBefore: number,
    impactAfter: number,
    controlBefore: number,
    controlAfter: number,
  ];
  readonly told: 'more' | 'less' | 'cannot tell';
  /** Strata that only one of the two places has: there the places differ for more reasons than one. */
  readonly unlikeStrata: readonly string[];
}

/** Stations count alike within a place, whatever their stratum. Null where a place has no station in one of the surveys. */
export function controlAnswer(
  {
    from,
    to,
    species,
  }: { readonly from: SurveyInHand; readonly to: SurveyInHand; readonly species: Species },
  asked: ControlAsked,
  confidence: number,
): ControlAnswer | null {
  const cells = [asked.impact, asked.control].flatMap((name) => [
    stationsAt(from, species, name),
    stationsAt(to, species, name),
  ]);
  if (cells.some((cell) => cell.length === 0)) return null;
  const [impactBefore, impactAfter, controlBefore, controlAfter] = cells.map((cell) =>
    cell.map((one) => one.valuePerHa),
  );
  const found = beforeAfterControl(
    {
      impactBefore: impactBefore!,
      impactAfter: impactAfter!,
      controlBefore: controlBefore!,
      controlAfter: controlAfter!,
    },
    confidence,
  );
  const strataOf = (some: readonly { readonly stratum: string }[]) => new Set(some.map((one) => one.stratum));
  const [ofImpact, ofControl] = [
    strataOf([...cells[0]!, ...cells[1]!]),
    strataOf([...cells[2]!, ...cells[3]!]),
  ];
  const interval = found.contrast.interval;
  return {
    ...asked,
    ...found,
    species: species.name,
    stations: [cells[0]!.length, cells[1]!.length, cells[2]!.length, cells[3]!.length],
    told:
      interval === null || (interval[0] <= 0 && interval[1] >= 0)
        ? 'cannot tell'
        : interval[0] > 0
          ? 'more'
          : 'less',
    unlikeStrata: [...ofImpact, ...ofControl]
      .filter((name) => ofImpact.has(name) !== ofControl.has(name))
      .toSorted(),
  };
}

/** Throws a Failure when no station of either survey lies in a zone or stratum of that name. */
export function requirePlace(surveys: readonly SurveyInHand[], name: string): void {
  const known = new Set(
    surveys.flatMap((survey) =>
      survey.stations.flatMap(({ record, stratum }) => [record.zone ?? '', stratum.name]),
    ),
  );
  if (known.has(name)) return;
  throw new Failure('no-such-place-in-both', {
    name,
    known: [...known]
      .filter((one) => one !== '')
      .toSorted()
      .join(', '),
  });
}

function stationsAt(survey: SurveyInHand, species: Species, name: string) {
  const samples = stratumSamples(observeSpecies(survey, species), survey.plannedAreaCm2, {
    estimator: 'station mean',
    selection: 'random',
  });
  return samples.flatMap(({ observed, valuesPerHa, stratum }) =>
    observed.flatMap((one, i) =>
      one.station.record.zone === name || stratum.name === name
        ? [{ valuePerHa: valuesPerHa[i]!, stratum: stratum.name }]
        : [],
    ),
  );
}
