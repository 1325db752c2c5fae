/** Where the stations are, at the detail of position that was chosen. */

import { reportWords } from '../catalogue/report-words.ts';
import { bothWidths, figure, paragraph, section } from '../html.ts';
import { formatCount } from '../numbers.ts';
import type { Drawing } from '../plot-figure.ts';
import { positionDetailInWords } from '../position-detail.ts';
import type { ReportInput, ReportSurvey } from '../report-input.ts';
import { stationMap } from '../station-map.ts';

export function whereSection(
  input: ReportInput,
  survey: ReportSurvey,
  { language, document }: Drawing,
): string {
  const stations = survey.inHand.stations;
  const detail = input.settings.positionDetail;
  const strata = survey.strata.map((stratum) => stratum.name);
  const zones = [...new Set(stations.flatMap((station) => station.record.zone ?? []))].toSorted();
  const inWords = `Map of ${formatCount(stations.length)} stations in the strata ${strata.join(', ')}`;
  const draw = (width: number) => stationMap(stations, { width, detail, inWords, strata, zones, document });
  const { drawing, withoutPosition } = draw(680);
  const without =
    withoutPosition.length === 0
      ? ''
      : ` Stations without a position on record: ${withoutPosition.join(', ')}.`;
  const caption = `${formatCount(stations.length - withoutPosition.length)} of ${formatCount(stations.length)} stations. ${positionDetailInWords(detail)}${sideBySide(detail)} Longitudes are drawn together by the cosine of the latitude: right for a few kilometres.${without}`;
  return section('where', reportWords(language).where, [
    drawing === null
      ? paragraph(`No map is drawn. ${positionDetailInWords(detail)}${without}`)
      : figure(
          bothWidths((width) => draw(width).drawing ?? ''),
          caption,
        ),
  ]);
}

function sideBySide(detail: string): string {
  return detail === 'rounded' ? ' Stations that fall on one rounded point stand side by side.' : '';
}
