/** Does the density of one species in one survey stand, when made in other ways and without single stations? */

import type { Reason } from '../../survey/message.ts';
import type { Species } from '../../survey/words.ts';
import type { DensityAnswer } from '../answers.ts';
import { defaultDensitySettings } from '../density/density-settings.ts';
import type { StratumSample } from '../density/stratum-sample.ts';
import { compareMethods } from '../status/compare-methods.ts';
import { methodUsed } from '../status/count-method.ts';
import { probabilityBelow } from '../status/probability-below.ts';
import type { ReferenceUsed } from '../status/status-answer.ts';
import { leaveOneOut, type WithoutStation } from './leave-one-out.ts';
import { classified, saidOf, side } from './said.ts';
import type { Said, SensitivityAnswer, StationInfluence, Variant, Verdict } from './sensitivity-answer.ts';
import {
  answerWith,
  type SensitivityInput,
  type SensitivitySettings,
  samplesOf,
  variantsOf,
} from './sensitivity-variants.ts';

/** This tool's rule, not published: from these relative changes on, an answer leans or rests on one station. */
const leansFrom = 1 / 5;
const restsFrom = 1 / 3;

export function estimateSensitivity(
  input: SensitivityInput,
  settings: SensitivitySettings,
): SensitivityAnswer {
  const { survey, species, reference } = input;
  const density = defaultAnswer(input, settings);
  const referenceHeld =
    reference === null ? null : compareMethods(methodUsed(survey), reference.content).held;
  const usable = referenceHeld === null ? reference : null;
  const base = { ...nothing, density, reference, referenceHeld };
  const reason = whyNot(density, species);
  if (reason !== null) return { ...base, reason };
  const said = saidOf(density, usable);
  const stations = influences(samplesOf(survey, species), density, usable);
  const variants = variantsOf(
    { ...input, reference: usable },
    { density, most: stations[0] ?? null },
    settings,
  );
  const turned = turnedBy(said, { stations, variants });
  return {
    ...base,
    said,
    stations,
    lowest: extreme(stations, -1),
    highest: extreme(stations, 1),
    variants,
    turned,
    verdict: verdictOf(stations, said),
  };
}

/** The answer of the density verb; one archive for it and for the variants, since most of the time goes into that. */
function defaultAnswer(
  { survey, species, estimator, archive }: SensitivityInput,
  settings: SensitivitySettings,
): DensityAnswer {
  const [plain] = estimator.answers(survey, species);
  if (plain === undefined) throw new Error('estimateSensitivity requires an answer for the survey');
  if (plain.densityPerHa === null) return plain;
  const intervals = archive.intervalsFor(species, survey);
  return answerWith(survey, species, { settings: { ...defaultDensitySettings, ...settings }, intervals });
}

const nothing = {
  said: null,
  verdict: null,
  stations: [],
  lowest: null,
  highest: null,
  variants: [],
  turned: [],
  reason: null,
} as const;

/** A bound has nothing to lean on, and a mean without spread nothing to compare with. */
function whyNot(density: DensityAnswer, species: Species): Reason | null {
  if (density.densityPerHa === null) return density.reason;
  if (density.animals === 0) return { code: 'none-seen', parameters: { species: species.name } };
  return density.standardErrorPerHa === null
    ? (density.reason ?? { code: 'no-spread', parameters: { where: density.scope.name } })
    : null;
}

/** Every station, the greatest mover first. */
function influences(
  samples: readonly StratumSample[],
  density: DensityAnswer,
  reference: ReferenceUsed | null,
): readonly StationInfluence[] {
  return leaveOneOut(samples)
    .map((one) => ({
      ...one,
      shareOfAnimals: one.animals / density.animals,
      change: one.densityPerHa / density.densityPerHa! - 1,
      said: saidWithout(one, reference),
    }))
    .toSorted((a, b) => Math.abs(b.change) - Math.abs(a.change));
}

function saidWithout(one: WithoutStation, reference: ReferenceUsed | null): Said | null {
  if (reference === null || one.standardErrorPerHa === null || one.densityPerHa === 0) return null;
  const { densityPerHa, standardErrorPerHa, degreesOfFreedom } = one;
  const spread = { densityPerHa, cv: standardErrorPerHa / densityPerHa, degreesOfFreedom };
  return classified(probabilityBelow(spread, reference.content));
}

function extreme(stations: readonly StationInfluence[], sign: 1 | -1): StationInfluence | null {
  return stations.reduce<StationInfluence | null>(
    (best, one) => (best === null || sign * one.change > sign * best.change ? one : best),
    null,
  );
}

/** Like with like: stations and the log-normal variant by the design, the others by the belief. */
function turnedBy(
  said: Said | null,
  {
    stations,
    variants,
  }: { readonly stations: readonly StationInfluence[]; readonly variants: readonly Variant[] },
): readonly string[] {
  if (said === null) return [];
  const byVariant = variants.filter((one) => one.said !== null && side(one.said) !== side(said));
  const names = new Set(
    byVariant.flatMap((one) => (one.kind === 'without-station' ? one.stations : [one.kind])),
  );
  const design = variants.find((one) => one.kind === 'lognormal')?.said ?? null;
  if (design !== null) {
    for (const one of stations)
      if (one.said !== null && side(one.said) !== side(design)) names.add(one.station);
  }
  return [...names];
}

function verdictOf(stations: readonly StationInfluence[], said: Said | null): Verdict {
  const greatest = Math.abs(stations[0]?.change ?? 0);
  if (greatest > restsFrom || isTurnedByOne(stations, said)) return 'rests';
  return greatest > leansFrom ? 'leans' : 'stands';
}

function isTurnedByOne(stations: readonly StationInfluence[], said: Said | null): boolean {
  if (said === null) return false;
  const sides = new Set(stations.flatMap((one) => (one.said === null ? [] : [side(one.said)])));
  return sides.size > 1;
}
