/** Every station as its own line of belts: what was done, and what is missing. */

import type { StationWithTransects } from '../../survey/observation.ts';
import { beltStrip } from '../belt-strip.ts';
import { animalsOn, beltsOf } from '../belts.ts';
import { type ReportPhrases, reportPhrases } from '../catalogue/report-phrases.ts';
import { reportWords } from '../catalogue/report-words.ts';
import type { Language } from '../catalogue/sentence.ts';
import { escapeText } from '../escape.ts';
import { bothWidths, heading, paragraph, section } from '../html.ts';
import { formatCount } from '../numbers.ts';
import type { ReportSurvey } from '../report-input.ts';
import { stripLegend } from '../strip-legend.ts';

export function stripsSection(survey: ReportSurvey, language: Language): string {
  const words = reportWords(language);
  const { strips } = reportPhrases(language);
  const { stations, protocol } = survey.inHand;
  const fullCount = Math.max(
    1,
    ...stations.flatMap((s) => s.transects.map((transect) => animalsOn(transect, null))),
  );
  const frame = { width: 320, protocol, species: null, fullCount, language };
  const blocks = survey.strata.flatMap((stratum) => {
    const here = stations.filter((station) => station.stratum.name === stratum.name);
    if (here.length === 0) return [];
    const drawn = here.map((station) => stationBlock(station, beltStrip(station, frame), strips));
    return [
      heading(3, strips.stations(stratum.name, formatCount(here.length), here.length === 1)),
      `<div class="pairs">${drawn.join('\n')}</div>`,
    ];
  });
  const full = strips.full(formatCount(fullCount));
  return section('stations', words.strips, [
    paragraph(`${words.stripsExplained} ${full}`),
    bothWidths((width) => stripLegend(width, language)),
    ...blocks,
  ]);
}

function stationBlock(station: StationWithTransects, strip: string, words: ReportPhrases['strips']): string {
  const { code, date, site, zone } = station.record;
  const belts = beltsOf(station, null, null);
  const animals = belts.reduce((sum, belt) => sum + belt.animals, 0);
  const searched = belts.filter((belt) => belt.state === 'counted' || belt.state === 'zero').length;
  const rest = [
    date,
    ...(site === null ? [] : [site]),
    ...(zone === null ? [] : [zone]),
    words.animals(formatCount(animals), animals === 1),
    ...(searched === belts.length ? [] : [words.searched(searched, belts.length)]),
  ].join(' · ');
  return `<div class="station"><p>${escapeText(code)} <small>${escapeText(rest)}</small></p>${strip}</div>`;
}
