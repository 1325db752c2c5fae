/** Is that healthy? Against published densities, and the shares of mature and legal animals. */

import type { SizeShare, StatusAnswer } from '../../../estimates/status/status-answer.ts';
import { adviceWords } from '../../catalogue/advice-words.ts';
import { changePhrases } from '../../catalogue/change-phrases.ts';
import { type Language, sentence } from '../../catalogue/sentence.ts';
import { statusPhrases } from '../../catalogue/status-phrases.ts';
import { escapeText } from '../../escape.ts';
import { figure, heading, list, paragraph, section } from '../../html.ts';
import { formatShort } from '../../numbers.ts';
import type { ReportAdvice } from '../../report-advice.ts';
import type { ReportInput } from '../../report-input.ts';
import { shareStrip } from '../../share-strip.ts';
import { speciesNames } from '../../species-names.ts';
import { comparisonSentence, referenceInWords, shareSentence } from '../../status-words.ts';
import { nameMarkup } from '../answer.ts';
import { capital, ended, names } from './words-of-advice.ts';

export function healthySection(input: ReportInput, { status }: ReportAdvice, language: Language): string {
  const words = adviceWords(language);
  const nameOf = speciesNames(input.species);
  const compared = status.filter(({ comparisons }) => comparisons.length > 0);
  const labels = (side: Side) =>
    names(
      status.filter((one) => sideOf(one) === side).map(({ density }) => nameOf(density.species).label),
      words.none,
    );
  const entries = compared.map(
    (one) =>
      `<div><dt>${nameMarkup(nameOf(one.density.species))}</dt><dd>${statusSentences(one, language)
        .map((text) => `<p>${escapeText(text)}</p>`)
        .join('')}</dd></div>`,
  );
  return section('healthy', words.healthy, [
    paragraph(
      compared.length === 0
        ? words.noValues
        : words.statusAnswer(labels('below'), labels('above'), labels('open')),
    ),
    ...(compared.length === 0
      ? []
      : [`<dl>${entries.join('\n')}</dl>`, paragraph(words.statusLimits, 'quiet')]),
    heading(3, words.shares),
    ...sharesOf(input, status, language),
  ]);
}

type Side = 'below' | 'above' | 'open' | 'none';

/** On which side of all the densities it can be compared with. */
function sideOf({ comparisons }: StatusAnswer): Side {
  const compared = comparisons.filter(({ held }) => held === null);
  if (compared.length === 0) return 'none';
  const isBelow = compared.every(({ statusClass, bound }) =>
    bound === null ? statusClass === 'below' || statusClass === 'likely below' : bound.isBelow,
  );
  if (isBelow) return 'below';
  const isAbove = compared.every(
    ({ statusClass, bound }) => bound === null && (statusClass === 'above' || statusClass === 'likely above'),
  );
  return isAbove ? 'above' : 'open';
}

/** Those it can be compared with first; then each reason once, with the densities it holds back. */
export function statusSentences({ comparisons }: StatusAnswer, language: Language): string[] {
  const compared = comparisons.filter(({ held }) => held === null);
  const byReason = Map.groupBy(
    comparisons.filter(({ held }) => held !== null),
    ({ held }) => sentence(language, held!),
  );
  const held = [...byReason].map(([reason, those]) => {
    const against = those.map((one) => referenceInWords(one.reference, language)).join(', ');
    return statusPhrases(language).notComparedWith(against, reason);
  });
  return [...compared.map((one) => capital(comparisonSentence(one, language))), ...held].map(ended);
}

function sharesOf(input: ReportInput, status: readonly StatusAnswer[], language: Language): string[] {
  const words = adviceWords(language);
  const phrases = statusPhrases(language);
  const nameOf = speciesNames(input.species);
  const rows = status
    .filter(({ density }) => density.animals > 0)
    .flatMap(({ density, atMaturity, atLegalSize, measured }) =>
      [
        ...atMaturity.map((share) => ({ share, what: words.mature, long: phrases.atMaturity })),
        ...(atLegalSize === null ? [] : [{ share: atLegalSize, what: words.legal, long: phrases.atLimit }]),
      ].map((one) => ({
        ...one,
        species: nameOf(density.species).label,
        measured,
        animals: density.animals,
      })),
    );
  const known = rows.filter(({ share }) => share.share !== null);
  if (known.length === 0) return [paragraph(words.noLengths)];
  const label = ({ species, what, share }: { species: string; what: string; share: SizeShare }) =>
    `${species}, ${what} (${formatShort(share.limitMm, language)} mm)`;
  const drawn = known.map((row) => ({ label: label(row), ...row.share.share! }));
  const told = rows.map(({ share, long, species, measured, animals }) =>
    ended(
      changePhrases(language).colon(
        species,
        phrases.measured(shareSentence(share, long, language), `${measured}`, `${animals}`),
      ),
    ),
  );
  return [
    figure(shareStrip(drawn, told.join(' ')), words.sharesExplained),
    `<div class="quiet notes">${list(told)}</div>`,
  ];
}
