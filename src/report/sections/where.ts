/** Where the stations are, at the detail of position that was chosen. */

import { reportPhrases } from '../catalogue/report-phrases.ts';
import { reportWords } from '../catalogue/report-words.ts';
import { bothWidths, figure, paragraph, section } from '../html.ts';
import { formatCount } from '../numbers.ts';
import type { Drawing } from '../plot-figure.ts';
import type { ReportInput, ReportSurvey } from '../report-input.ts';
import { stationMap } from '../station-map.ts';

export function whereSection(
  input: ReportInput,
  survey: ReportSurvey,
  { language, document }: Drawing,
): string {
  const stations = survey.inHand.stations;
  const { where } = reportPhrases(language);
  const detail = input.settings.positionDetail;
  const strata = survey.strata.map((stratum) => stratum.name);
  const zones = [...new Set(stations.flatMap((station) => station.record.zone ?? []))].toSorted();
  const inWords = where.inWords(formatCount(stations.length), strata.join(', '));
  const borders = (input.borders ?? []).filter(({ name }) => strata.includes(name)).map(({ area }) => area);
  const draw = (width: number) =>
    stationMap(stations, { width, detail, inWords, strata, zones, borders, document, language });
  const { drawing, withoutPosition } = draw(680);
  const without = withoutPosition.length === 0 ? '' : where.without(withoutPosition.join(', '));
  const rounded = detail === 'rounded';
  const lines = borders.length === 0 ? '' : rounded ? where.bordersRounded : where.borders;
  const shown = formatCount(stations.length - withoutPosition.length);
  const caption = `${where.shown(shown, formatCount(stations.length))} ${where.positions[detail]}${rounded ? where.sideBySide : ''}${where.drawnTogether}${lines}${without}`;
  return section('where', reportWords(language).where, [
    drawing === null
      ? paragraph(`${where.noMap} ${where.positions[detail]}${without}`)
      : figure(
          bothWidths((width) => draw(width).drawing ?? ''),
          caption,
        ),
  ]);
}
