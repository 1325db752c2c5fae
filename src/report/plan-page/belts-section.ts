/** Where each belt lies: the bearings, the stations one by one, and each from above. */

import { figure, paragraph, section } from '../html.ts';
import { modelInWords } from '../plan-lines.ts';
import type { PlanPageInput } from './plan-page-input.ts';
import { stationTable, turningTable } from './plan-tables.ts';
import { planPageWords as words } from './plan-words.ts';
import { stationDetail } from './station-detail.ts';

export function beltsSection(input: PlanPageInput): string {
  const { content } = input;
  if (content.laid === null)
    return section('belts', words.belts, [paragraph(words.noBelts), stationTable(input)]);
  const { laid } = content;
  const misfits = content.stations.filter(
    ({ role, shareInside }) => role === 'planned' && shareInside !== null && shareInside < 1,
  );
  const bearings = `Bearings for ${laid.forDate}: true from the map, and by compass; ${modelInWords(laid)}. Inside: the share of belt on its ground${laid.beltWidthM === null ? ', along its line' : ', over its whole width'}.`;
  return section('belts', words.belts, [
    paragraph(bearings),
    ...(misfits.length === 0
      ? []
      : [
          paragraph(`Not wholly on their ground: ${misfits.map(({ code }) => code).join(', ')}.`, 'question'),
        ]),
    stationTable(input),
    turningTable(input),
    ...(input.positionDetail === 'exact' ? [detailFigures(input)] : []),
  ]);
}

function detailFigures({ content, areas }: PlanPageInput): string {
  const masks = areas
    .filter(({ role }) => role === 'mask')
    .map(({ content: { area } }) => ({ area, isMask: true }));
  const figures = content.stations
    .filter(({ role }) => role === 'planned')
    .flatMap((station) => {
      const own = areas.filter(({ role, name }) => role === 'stratum' && name === station.stratum);
      const ground = [...own.map(({ content: { area } }) => ({ area, isMask: false })), ...masks];
      const drawn = stationDetail(station, { areas: ground, beltWidthM: content.laid?.beltWidthM ?? null });
      return drawn === null ? [] : [figure(drawn, `${station.code}, ${station.stratum}`)];
    });
  return `${paragraph('Each station from above, to scale, north up. The ring is the start; a broken line is the border of its stratum, a dotted one of a mask.')}<div class="details">${figures.join('\n')}</div>`;
}
