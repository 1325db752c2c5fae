/** A plan as one HTML page in the manner of the report: opens with no network, needs no script, prints on A4. */

import type { Language } from '../catalogue/language.ts';
import { planPagePhrases } from '../catalogue/plan-page-phrases.ts';
import { reportPhrases } from '../catalogue/report-phrases.ts';
import { reportWords } from '../catalogue/report-words.ts';
import { formatDay } from '../days.ts';
import { escapeText } from '../escape.ts';
import { bothWidths, figure, list, paragraph, section } from '../html.ts';
import { formatCount } from '../numbers.ts';
import { type EmbeddedFont, fontFace } from '../page.ts';
import { planAgainstSentence } from '../plan-against-lines.ts';
import type { PlotDocument } from '../plot-figure.ts';
import { positionDetailInWords } from '../position-detail.ts';
import { stylesheet } from '../stylesheet.ts';
import { beltsSection } from './belts-section.ts';
import { decideSection } from './decide-section.ts';
import { madeSection } from './made-section.ts';
import { planMap } from './plan-map.ts';
import type { PlanPageInput } from './plan-page-input.ts';
import { againstTable, replacementTable, strataTable } from './plan-tables.ts';
import { precisionSection } from './precision-section.ts';

export interface PlanPageTools {
  readonly language: Language;
  readonly fonts: readonly EmbeddedFont[];
  /** What figures are drawn in: the page's own in a browser, a stand-in on the command line. */
  readonly document: PlotDocument;
}

export function renderPlanPage(input: PlanPageInput, tools: PlanPageTools): string {
  const { language } = tools;
  const words = planPagePhrases(language);
  const { invented } = reportWords(language);
  const sections = [
    decideSection(input, language),
    section('safety', words.safety.head, [list(words.safety.rules)]),
    section('strata', words.strata.head, [
      strataTable(input, language),
      ...(input.content.stations.some(({ selection }) => selection === 'hand-picked')
        ? [paragraph(words.strata.handPickedRule, 'quiet')]
        : []),
      paragraph(words.strata.replaceRule),
    ]),
    whereSection(input, tools),
    precisionSection(input, language),
    beltsSection(input, language),
    replacementsSection(input, language),
    againstSection(input, language),
    madeSection(input, language),
  ];
  const title = words.title(input.book.name, input.name);
  return `<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeText(title)}</title>
<style>${tools.fonts.map(fontFace).join('\n')}${stylesheet}${ownStyle}</style>
</head>
<body>
${input.book.invented ? paragraph(invented, 'invented') : ''}
<header><h1>${escapeText(title)}</h1>${paragraph(subtitle(input, language), 'quiet')}${paragraph(detailInWords(input, language), 'question')}</header>
<main>
${sections.filter((text) => text !== '').join('\n')}
</main>
<footer>${input.book.invented ? paragraph(invented) : ''}${paragraph(madeInWords(input, language))}</footer>
</body>
</html>
`;
}

const ownStyle = `
.details { display: grid; grid-template-columns: repeat(3, 1fr); gap: 1rem 1.1rem; margin: 1rem 0; }
@media screen { .scroll caption { max-width: calc(100vw - 2.5rem); } }
.details figure { margin: 0; break-inside: avoid; min-width: 0; }
.details figcaption { margin: .15rem 0 0; font-size: .875rem; line-height: 1.3; }
@media (max-width: 600px) { .details { grid-template-columns: 1fr 1fr; gap: .8rem .7rem; } }
@media print { .details { grid-template-columns: repeat(4, 1fr); gap: .5rem .8rem; } footer { break-before: avoid; } }
`;

function subtitle({ content }: PlanPageInput, language: Language): string {
  const words = planPagePhrases(language);
  const { survey, drawnOn, drawnBy } = content;
  return `${survey === null ? '' : words.forSurvey(survey)}${words.drawn(drawnOn, drawnBy)}`;
}

function detailInWords({ positionDetail }: PlanPageInput, language: Language): string {
  return positionDetail === 'exact'
    ? planPagePhrases(language).exact
    : positionDetailInWords(positionDetail, language);
}

function madeInWords(
  { generatedOn, programVersion, dataVersion }: PlanPageInput,
  language: Language,
): string {
  // The crew's page has its days as the book has them; French prints no such days in a sentence.
  const day = language === 'en' ? generatedOn : formatDay(generatedOn, language);
  return reportPhrases(language).page.madeOn(day, programVersion, dataVersion);
}

function whereSection(input: PlanPageInput, { document, language }: PlanPageTools): string {
  const { content } = input;
  const { where: words } = planPagePhrases(language);
  const strata = content.strata.map(({ name }) => name).join(', ');
  const inWords = words.inWords(formatCount(content.stations.length), strata);
  const draw = (width: number) => planMap(input, { width, inWords, document, language });
  const links = content.replacements.length === 0 ? '' : words.links;
  const stacked = input.positionDetail === 'rounded' ? words.stacked : '';
  return section('where', words.head, [
    draw(680) === null
      ? paragraph(words.noMap(detailInWords(input, language)))
      : figure(
          bothWidths((width) => draw(width) ?? ''),
          words.caption(stacked, links),
        ),
  ]);
}

function replacementsSection(input: PlanPageInput, language: Language): string {
  if (input.content.replacements.length === 0) return '';
  const { replacements: words } = planPagePhrases(language);
  return section('replacements', words.head, [replacementTable(input, language)]);
}

function againstSection(input: PlanPageInput, language: Language): string {
  const { against } = input;
  if (against === null) return '';
  const { effort } = reportPhrases(language);
  const strangers = against.notInPlan.length === 0 ? '' : effort.notInPlan(against.notInPlan.join(', '));
  return section('against', planPagePhrases(language).against.head, [
    paragraph(`${planAgainstSentence(against, language)}${strangers}`),
    againstTable(input, language),
  ]);
}
