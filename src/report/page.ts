/**
 * The report: one HTML file that opens with no network and needs no script.
 *
 * This room turns values into figures, tables and sentences. It calculates no estimate, opens no file and
 * asks no clock; fonts, dates and the document that figures are drawn in come as arguments.
 */

import { methodParagraphs } from './catalogue/method-words.ts';
import { reportPhrases } from './catalogue/report-phrases.ts';
import { type ReportWords, reportWords } from './catalogue/report-words.ts';
import type { Language } from './catalogue/sentence.ts';
import { formatDay, formatDays, formatMoment } from './days.ts';
import { escapeText } from './escape.ts';
import { paragraph, section } from './html.ts';
import type { PlotDocument } from './plot-figure.ts';
import type { ReportAdvice } from './report-advice.ts';
import type { ReportInput, ReportSurvey } from './report-input.ts';
import { fourQuestionsSection, inFullSection } from './sections/advice/four-questions.ts';
import { healthySection } from './sections/advice/healthy.ts';
import { moreOrLessSection } from './sections/advice/more-or-less.ts';
import { rootsSection } from './sections/advice/roots.ts';
import { standsSection } from './sections/advice/stands.ts';
import { takenSection } from './sections/advice/taken.ts';
import { weighsSection } from './sections/advice/weighs.ts';
import { answerSection } from './sections/answer.ts';
import { askedSection } from './sections/asked.ts';
import { densitySection } from './sections/density.ts';
import { effortSection } from './sections/effort.ts';
import { leftOutSection } from './sections/left-out.ts';
import { questionsSection } from './sections/questions.ts';
import { sizesSection } from './sections/sizes.ts';
import { stripsSection } from './sections/strips.ts';
import { surveysSection } from './sections/surveys.ts';
import { whereSection } from './sections/where.ts';
import { sortedAdvice } from './sorted-advice.ts';
import { stylesheet } from './stylesheet.ts';

/** A face of the family Source Sans 3, as base64 of a TTF or WOFF2 file. */
export interface EmbeddedFont {
  readonly weight: 400 | 600;
  readonly format: 'truetype' | 'woff2';
  readonly base64: string;
}

export interface ReportTools {
  readonly language: Language;
  readonly fonts: readonly EmbeddedFont[];
  /** What figures are drawn in: the page's own in a browser, a stand-in on the command line. */
  readonly document: PlotDocument;
}

/** The whole page for the last of the surveys. Requires at least one survey. */
export function renderReport(input: ReportInput, tools: ReportTools): string {
  const survey = input.surveys.at(-1);
  if (survey === undefined) throw new Error('renderReport requires at least one survey');
  const { language } = tools;
  const words = reportWords(language);
  const advised = (sections: (advice: ReportAdvice) => readonly string[]) =>
    input.advice === undefined ? [] : sections(sortedAdvice(input.advice, input));
  const sections = [
    askedSection(input, survey, language),
    // In the order of what is told, not of names: the first page speaks of the species that moved.
    ...(input.advice === undefined
      ? []
      : [fourQuestionsSection(input, input.advice, language), inFullSection(input, input.advice, language)]),
    answerSection(input, survey, language),
    ...advised((advice) => [
      moreOrLessSection(input, advice, tools),
      healthySection(input, advice, language),
      weighsSection(input, advice, language),
      takenSection(input, advice, language),
      standsSection(input, advice, language),
    ]),
    whereSection(input, survey, tools),
    densitySection(input, survey, tools),
    // With advice the same figures stand under the change.
    ...(input.advice?.change == null ? [surveysSection(input, tools)] : []),
    stripsSection(survey, language),
    sizesSection(input, survey, tools),
    effortSection(input, language),
    leftOutSection(input, survey, language),
    questionsSection(survey, language),
    section(
      'methods',
      words.methods,
      methodParagraphs(input.settings, language).map((text) => paragraph(text)),
    ),
    section(
      'limits-of-this-survey',
      words.caveatHead,
      words.caveat.map((text) => paragraph(text)),
    ),
    ...advised((advice) => [rootsSection(input, advice, language)]),
  ];
  return `<!doctype html>
<html lang="${language}">
${head(input, survey, tools)}
<body>
${input.book.invented ? paragraph(words.invented, 'invented') : ''}
${banner(input, survey, language)}
<main>
${sections.filter((text) => text !== '').join('\n')}
</main>
${footer(input, words, language)}
</body>
</html>
`;
}

function head(input: ReportInput, survey: ReportSurvey, tools: ReportTools): string {
  const { page } = reportPhrases(tools.language);
  const title = escapeText(page.title(input.book.name, survey.inHand.survey.name));
  return `<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>${tools.fonts.map(fontFace).join('\n')}${stylesheet}${pageFoot(input, survey, tools.language)}</style>
</head>`;
}

/** On every printed sheet: what it is a sheet of, when it was made, and which of how many. */
function pageFoot(input: ReportInput, survey: ReportSurvey, language: Language): string {
  const { page } = reportPhrases(language);
  const made = formatDay(input.generatedOn, language);
  const left = page.foot(page.title(input.book.name, survey.inHand.survey.name), made);
  return `@page { @bottom-left { content: ${cssText(left)}; } }\n`;
}

/** As a string of a style sheet: whatever is no letter, digit or space is written by its number. */
function cssText(text: string): string {
  const safe = text.replaceAll(
    /[^\p{L}\p{N} ]/gu,
    // The space after the number belongs to it.
    (sign) => `\\${sign.codePointAt(0)!.toString(16)} `,
  );
  return `"${safe}"`;
}

export function fontFace({ weight, format, base64 }: EmbeddedFont): string {
  if (!/^[A-Za-z0-9+/=]+$/.test(base64)) throw new Error('renderReport requires fonts in base64');
  const kind = format === 'woff2' ? 'font/woff2' : 'font/ttf';
  return `@font-face { font-family: 'Source Sans 3'; font-weight: ${weight}; src: url(data:${kind};base64,${base64}) format('${format}'); }`;
}

function banner(input: ReportInput, survey: ReportSurvey, language: Language): string {
  const { page } = reportPhrases(language);
  const { name, starts, ends } = survey.inHand.survey;
  const title = page.title(input.book.name, name);
  const dates = starts === null ? '' : formatDays(starts, ends ?? starts, language);
  const asOf = input.asOf == null ? [] : [page.asOf(formatMoment(input.asOf, language))];
  const quiet = [...(dates === '' ? [] : [dates]), ...asOf].map((text) => paragraph(text, 'quiet'));
  return `<header><h1>${escapeText(title)}</h1>${quiet.join('')}</header>`;
}

function footer(input: ReportInput, words: ReportWords, language: Language): string {
  const { madeOn, madeAsOf } = reportPhrases(language).page;
  const today = formatDay(input.generatedOn, language);
  const made = madeOn(today, input.programVersion, input.dataVersion);
  const origin = input.asOf == null ? made : madeAsOf(made, formatMoment(input.asOf, language));
  return `<footer>${input.book.invented ? paragraph(words.invented) : ''}${paragraph(origin)}</footer>`;
}
