/** The answers of advice in the order of the names that people use, as everywhere else on the page. */

import type { ReportAdvice } from './report-advice.ts';
import type { ReportInput } from './report-input.ts';
import { sortBySpecies } from './species-names.ts';

export function sortedAdvice(advice: ReportAdvice, input: Pick<ReportInput, 'species'>): ReportAdvice {
  const byDensity = <Answer extends { readonly density: { readonly species: string } }>(
    answers: readonly Answer[],
  ): Answer[] => sorted(answers, ({ density }) => density.species, input);
  return {
    ...advice,
    changeByZone: sortBySpecies(advice.changeByZone, input),
    trend: sortBySpecies(advice.trend, input),
    biomass: sortBySpecies(advice.biomass, input),
    biomassByStratum: sortBySpecies(advice.biomassByStratum, input),
    harvest: sorted(advice.harvest, ({ species }) => species ?? '', input),
    status: byDensity(advice.status),
    statusByZone: byDensity(advice.statusByZone),
    sensitivity: byDensity(advice.sensitivity),
  };
}

function sorted<Answer>(
  answers: readonly Answer[],
  speciesOf: (answer: Answer) => string,
  input: Pick<ReportInput, 'species'>,
): Answer[] {
  const named = answers.map((answer) => ({ species: speciesOf(answer), answer }));
  return sortBySpecies(named, input).map(({ answer }) => answer);
}
