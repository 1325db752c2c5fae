/** Where each belt lies: the bearings, the stations one by one, and each from above. */

import type { Language } from '../catalogue/language.ts';
import { planPagePhrases } from '../catalogue/plan-page-phrases.ts';
import { figure, paragraph, section } from '../html.ts';
import { modelInWords } from '../plan-lines.ts';
import type { PlanPageInput } from './plan-page-input.ts';
import { stationDetail } from './station-detail.ts';
import { stationTable, turningTable } from './station-tables.ts';

export function beltsSection(input: PlanPageInput, language: Language): string {
  const { belts: words, decide } = planPagePhrases(language);
  const { content } = input;
  if (content.laid === null)
    return section('belts', words.head, [paragraph(decide.noBelts), stationTable(input, language)]);
  const { laid } = content;
  const misfits = content.stations.filter(
    ({ role, shareInside }) => role === 'planned' && shareInside !== null && shareInside < 1,
  );
  const inside = laid.beltWidthM === null ? words.alongLine : words.wholeWidth;
  return section('belts', words.head, [
    paragraph(words.bearings(laid.forDate, modelInWords(laid, language), inside)),
    ...(misfits.length === 0
      ? []
      : [paragraph(words.misfits(misfits.map(({ code }) => code).join(', ')), 'question')]),
    stationTable(input, language),
    turningTable(input, language),
    ...(input.positionDetail === 'exact' ? [detailFigures(input, language)] : []),
  ]);
}

function detailFigures({ content, areas }: PlanPageInput, language: Language): string {
  const masks = areas
    .filter(({ role }) => role === 'mask')
    .map(({ content: { area } }) => ({ area, isMask: true }));
  const figures = content.stations
    .filter(({ role }) => role === 'planned')
    .flatMap((station) => {
      const own = areas.filter(({ role, name }) => role === 'stratum' && name === station.stratum);
      const ground = [...own.map(({ content: { area } }) => ({ area, isMask: false })), ...masks];
      const beltWidthM = content.laid?.beltWidthM ?? null;
      const drawn = stationDetail(station, { areas: ground, beltWidthM }, language);
      return drawn === null ? [] : [figure(drawn, `${station.code}, ${station.stratum}`)];
    });
  return `${paragraph(planPagePhrases(language).belts.details)}<div class="details">${figures.join('\n')}</div>`;
}
