/** Where does this number come from? Opens with the reader's own hand, without a script. */

import { fitInWords } from '../../biomass-lines.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import type { Language } from '../../catalogue/sentence.ts';
import { weightPhrases } from '../../catalogue/weight-phrases.ts';
import { explainSteps } from '../../explain-steps.ts';
import { closureStep, harvestSteps } from '../../harvest-steps.ts';
import { paragraph, section } from '../../html.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { nameInSentence, type SpeciesName, speciesNames } from '../../species-names.ts';
import { pairInWords } from '../../value-words.ts';
import { capital, details, ended } from './words-of-advice.ts';

export function rootsSection(input: ReportInput, advice: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const nameOf = speciesNames(input.species);
  const open = advice.explanations.filter(({ value }) => value !== null);
  return section('roots', words.roots, [
    paragraph(open.length === 0 ? words.noRoots : words.rootsAnswer),
    ...open.map((one) => details(words.of(nameInSentence(nameOf(one.species))), explainSteps(one, language))),
    ...weights(advice, { nameOf, language }),
    ...catches(advice, { nameOf, language }),
  ]);
}

interface Naming {
  readonly nameOf: (species: string) => SpeciesName;
  readonly language: Language;
}

/** The curve in full, and how well it fits. */
function weights({ biomass, fits }: ReportAdvice, { nameOf, language }: Naming): readonly string[] {
  return biomass.flatMap(({ species, basis, animals }) => {
    if (basis?.by !== 'pair' || animals === 0) return [];
    const fit = basis.origin.status === 'fit' ? fits.find((one) => one.species === species)?.fit : undefined;
    const lines = [
      pairInWords(basis.pair, language),
      ...(fit === undefined ? [] : [fitInWords(fit, basis.correction, language)]),
    ];
    const head = weightPhrases(language).weightsOf(nameInSentence(nameOf(species)));
    return [
      details(
        head,
        lines.map((line) => ended(capital(line))),
      ),
    ];
  });
}

function catches({ harvest }: ReportAdvice, { nameOf, language }: Naming): readonly string[] {
  return harvest
    .filter(({ stock }) => stock !== null)
    .map((one) =>
      details(adviceWords(language).stepsOf(nameInSentence(nameOf(one.species!))), [
        ...harvestSteps(one, language),
        ...(one.closure === null ? [] : closureStep(one.closure, language)),
      ]),
    );
}
