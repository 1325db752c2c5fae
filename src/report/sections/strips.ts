/** Every station as its own line of belts: what was done, and what is missing. */

import type { StationWithTransects } from '../../survey/observation.ts';
import { beltStrip } from '../belt-strip.ts';
import { animalsOn, beltsOf } from '../belts.ts';
import { reportWords } from '../catalogue/report-words.ts';
import type { Language } from '../catalogue/sentence.ts';
import { escapeText } from '../escape.ts';
import { bothWidths, heading, paragraph, section } from '../html.ts';
import { formatCount } from '../numbers.ts';
import type { ReportSurvey } from '../report-input.ts';
import { stripLegend } from '../strip-legend.ts';

export function stripsSection(survey: ReportSurvey, language: Language): string {
  const words = reportWords(language);
  const { stations, protocol } = survey.inHand;
  const fullCount = Math.max(
    1,
    ...stations.flatMap((s) => s.transects.map((transect) => animalsOn(transect, null))),
  );
  const frame = { width: 320, protocol, species: null, fullCount };
  const blocks = survey.strata.flatMap((stratum) => {
    const here = stations.filter((station) => station.stratum.name === stratum.name);
    if (here.length === 0) return [];
    const drawn = here.map((station) => stationBlock(station, beltStrip(station, frame)));
    return [
      heading(
        3,
        `${stratum.name}, ${formatCount(here.length)} ${here.length === 1 ? 'station' : 'stations'}`,
      ),
      `<div class="pairs">${drawn.join('\n')}</div>`,
    ];
  });
  const full = `Where there are too many animals for strokes, a belt filled to the top holds ${formatCount(fullCount)}.`;
  return section('stations', words.strips, [
    paragraph(`${words.stripsExplained} ${full}`),
    bothWidths((width) => stripLegend(width)),
    ...blocks,
  ]);
}

function stationBlock(station: StationWithTransects, strip: string): string {
  const { code, date, site, zone } = station.record;
  const belts = beltsOf(station, null, null);
  const animals = belts.reduce((sum, belt) => sum + belt.animals, 0);
  const searched = belts.filter((belt) => belt.state === 'counted' || belt.state === 'zero').length;
  const rest = [
    date,
    ...(site === null ? [] : [site]),
    ...(zone === null ? [] : [zone]),
    `${formatCount(animals)} ${animals === 1 ? 'animal' : 'animals'}`,
    ...(searched === belts.length ? [] : [`${searched} of ${belts.length} belts searched`]),
  ].join(' · ');
  return `<div class="station"><p>${escapeText(code)} <small>${escapeText(rest)}</small></p>${strip}</div>`;
}
