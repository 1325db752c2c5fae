/** A plan as one HTML page in the manner of the report: opens with no network, needs no script, prints on A4. */

import { escapeText } from '../escape.ts';
import { bothWidths, figure, list, paragraph, section } from '../html.ts';
import { formatCount, formatShort } from '../numbers.ts';
import { type EmbeddedFont, fontFace } from '../page.ts';
import { planAgainstSentence } from '../plan-against-lines.ts';
import { methodWords, spreadLines, stratumRows } from '../plan-lines.ts';
import type { PlotDocument } from '../plot-figure.ts';
import { positionDetailInWords } from '../position-detail.ts';
import { stylesheet } from '../stylesheet.ts';
import { beltsSection } from './belts-section.ts';
import { planMap } from './plan-map.ts';
import type { PlanPageInput } from './plan-page-input.ts';
import { againstTable, replacementTable, strataTable } from './plan-tables.ts';
import { planPageWords as words } from './plan-words.ts';
import { precisionSection } from './precision-section.ts';

export interface PlanPageTools {
  readonly fonts: readonly EmbeddedFont[];
  /** What figures are drawn in: the page's own in a browser, a stand-in on the command line. */
  readonly document: PlotDocument;
}

export function renderPlanPage(input: PlanPageInput, tools: PlanPageTools): string {
  const sections = [
    decideSection(input),
    section('safety', words.safety, [list(words.safetyRules)]),
    section('strata', words.strata, [
      strataTable(input),
      ...(input.content.stations.some(({ selection }) => selection === 'hand-picked')
        ? [paragraph(words.handPicked, 'quiet')]
        : []),
      paragraph(words.replaceRule),
    ]),
    whereSection(input, tools),
    precisionSection(input),
    beltsSection(input),
    replacementsSection(input),
    againstSection(input),
    madeSection(input),
  ];
  const title = `${input.book.name}: plan ${input.name}`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeText(title)}</title>
<style>${tools.fonts.map(fontFace).join('\n')}${stylesheet}${ownStyle}</style>
</head>
<body>
${input.book.invented ? paragraph(words.invented, 'invented') : ''}
<header><h1>${escapeText(title)}</h1>${paragraph(subtitle(input), 'quiet')}${paragraph(detailInWords(input), 'question')}</header>
<main>
${sections.filter((text) => text !== '').join('\n')}
</main>
<footer>${input.book.invented ? paragraph(words.invented) : ''}${paragraph(`Made on ${input.generatedOn} with Slateline ${input.programVersion} from data version ${input.dataVersion}.`)}</footer>
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

function subtitle({ content }: PlanPageInput): string {
  const { survey, drawnOn, drawnBy } = content;
  return `${survey === null ? '' : `For ${survey}. `}Drawn on ${drawnOn} by ${drawnBy}.`;
}

function detailInWords({ positionDetail }: PlanPageInput): string {
  return positionDetail === 'exact' ? words.exact : positionDetailInWords(positionDetail);
}

function decideSection({ content }: PlanPageInput): string {
  const rows = stratumRows(content);
  const total = (of: (row: (typeof rows)[number]) => number) => rows.reduce((sum, row) => sum + of(row), 0);
  const picked = total((row) => row.handPicked);
  const { laid } = content;
  const stations = `${formatCount(total((row) => row.planned))} stations in ${formatCount(rows.length)} strata${picked === 0 ? '' : `, and ${formatCount(picked)} hand-picked beside them`}; ${formatCount(total((row) => row.sparesLeft))} spares.`;
  const work =
    laid === null
      ? words.noBelts
      : `At each station ${formatCount(laid.belts)} belts of ${formatShort(laid.beltLengthM)} m${laid.beltWidthM === null ? '' : ` by ${formatShort(laid.beltWidthM)} m`} in series, ${formatShort(laid.gapM)} m apart.`;
  return section('decide', words.decide, [
    paragraph(content.decision ?? words.noDecision, content.decision === null ? 'question' : ''),
    paragraph(`${stations} ${work}`),
  ]);
}

function whereSection(input: PlanPageInput, { document }: PlanPageTools): string {
  const { content } = input;
  const inWords = `Map of ${formatCount(content.stations.length)} planned stations and spares in ${content.strata.map(({ name }) => name).join(', ')}`;
  const draw = (width: number) => planMap(input, { width, inWords, document });
  const links =
    content.replacements.length === 0
      ? ''
      : ' A dashed line leads from a dropped station to the one in its place.';
  const stacked =
    input.positionDetail === 'rounded' ? ' Stations of one rounded point lie on one another.' : '';
  const caption = `Borders as on the map of the book. Codes of spares are in the table.${stacked}${links} Longitudes are drawn together by the cosine of the latitude: right for a few kilometres. No depths: this is no chart.`;
  return section('where', words.where, [
    draw(680) === null
      ? paragraph(`No map is drawn. ${detailInWords(input)}`)
      : figure(
          bothWidths((width) => draw(width) ?? ''),
          caption,
        ),
  ]);
}

function replacementsSection(input: PlanPageInput): string {
  if (input.content.replacements.length === 0) return '';
  return section('replacements', words.replacements, [replacementTable(input)]);
}

function againstSection(input: PlanPageInput): string {
  const { against } = input;
  if (against === null) return '';
  const strangers =
    against.notInPlan.length === 0 ? '' : ` Worked and not in the plan: ${against.notInPlan.join(', ')}.`;
  return section('against', words.against, [
    paragraph(`${planAgainstSentence(against)}${strangers}`),
    againstTable(input),
  ]);
}

function madeSection({ content }: PlanPageInput): string {
  const { minimumSpacingM, allocation, revisits } = content;
  const apart = minimumSpacingM === null ? '' : `, at least ${formatShort(minimumSpacingM)} m apart`;
  return section('made', words.made, [
    paragraph(
      `${capital(methodWords[content.method])}${apart}; seed ${String(content.seed)}.${allocation === undefined ? '' : ` ${allocation}.`}${revisits === undefined ? '' : ` Fixed stations are those of ${revisits}.`}`,
    ),
    paragraph(words.made1),
    ...(content.laid === null ? [] : [paragraph(words.made2)]),
    ...spreadMarkup(content),
  ]);
}

/** Lines that stand in from the edge are a list under the line before them. */
function spreadMarkup(content: PlanPageInput['content']): string[] {
  const markup: string[] = [];
  let items: string[] = [];
  const close = () => {
    if (items.length > 0) markup.push(list(items));
    items = [];
  };
  for (const text of spreadLines(content).filter((one) => one !== '')) {
    if (text.startsWith(' ')) items.push(text.trim());
    else {
      close();
      markup.push(paragraph(text));
    }
  }
  close();
  return markup;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
