/**
 * The work of the screens that reads whole surveys, as orders that can be carried to another thread and back:
 * plain values in, plain values out. Saving a sheet never waits behind one of them.
 */

import type { DensitySettings } from '../../estimates/density/density-settings.ts';
import { readTables } from '../../exchange/read-tables.ts';
import { type Language, sentence } from '../../report/catalogue/sentence.ts';
import { type ScreenLanguage, serverSentence } from '../../report/catalogue/server-words.ts';
import { type EmbeddedFont, type ReportTools, renderReport } from '../../report/page.ts';
import type { Signature, Store } from '../../survey/store.ts';
import { tableNames } from '../../survey/table-rows.ts';
import { checkSurveys } from '../check-survey.ts';
import { estimateDensity } from '../estimate-density.ts';
import { estimateSizes, type SizesRequest } from '../estimate-sizes.ts';
import { type HistoryRequest, history } from '../history.ts';
import { importRows } from '../import/import-rows.ts';
import { defaultReportRequest, reportInput } from '../report.ts';
import { densityRow, problemRow, sizesRow } from './answer-rows.ts';
import { type ExplainRequest, explainCount } from './explain-count.ts';
import { stationList } from './station-list.ts';

export type WorkOrder = { readonly language: ScreenLanguage } & (
  | {
      readonly task: 'densities';
      readonly survey: string;
      readonly species: string | null;
      readonly settings: DensitySettings;
    }
  | { readonly task: 'sizes'; readonly request: SizesRequest }
  | { readonly task: 'problems'; readonly survey: string; readonly surveyId: string; readonly today: string }
  | { readonly task: 'stations'; readonly surveyId: string }
  | { readonly task: 'history'; readonly request: HistoryRequest }
  | { readonly task: 'explain'; readonly request: ExplainRequest }
  | ReportOrder
  | ImportOrder
);

export interface ReportOrder {
  readonly task: 'report';
  readonly survey: string;
  readonly decision: string | null;
  readonly positions: 'exact' | 'rounded' | 'none';
  readonly classMm: number;
  /** ISO day. */
  readonly today: string;
}

export interface ImportOrder {
  readonly task: 'import';
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly dryRun: boolean;
  readonly signature: Signature;
}

/** What the work needs from outside its thread. */
export interface WorkTools {
  readonly store: Store;
  readonly newId: () => string;
  readonly version: string;
  readonly fonts: () => readonly EmbeddedFont[];
  readonly document: () => ReportTools['document'];
  /** Told in words what is being done. */
  readonly onStep: (step: string) => void;
}

/** The text that goes out: JSON, or for a report its HTML. */
export async function doWork(order: WorkOrder, tools: WorkTools): Promise<string> {
  if (order.task === 'report') return reportPage(order, order.language, tools);
  return JSON.stringify(await rowsOf(order, tools));
}

function rowsOf(order: Exclude<WorkOrder, { task: 'report' }>, tools: WorkTools): Promise<object> {
  const { store } = tools;
  const language = catalogueLanguage(order.language);
  switch (order.task) {
    case 'densities':
      return estimateDensity(store, order).then(({ answers, dataVersion }) => ({
        dataVersion,
        rows: answers.map((answer) => densityRow(answer, language)),
      }));
    case 'sizes':
      return estimateSizes(store, order.request).then(({ answers, dataVersion }) => ({
        dataVersion,
        rows: answers.map((answer) => sizesRow(answer, language)),
      }));
    case 'problems':
      return problems(order, store, language);
    case 'stations':
      return stationList(store, order).then(async (stations) => ({
        dataVersion: await store.dataVersion(),
        stations,
      }));
    case 'history':
      return history(store, order.request);
    case 'explain':
      return explainCount(store, order.request);
    case 'import':
      return importFile(order, order.language, tools);
  }
}

/** Checks, reasons and refusals speak the language of the screen. */
export function catalogueLanguage(language: ScreenLanguage): Language {
  return language;
}

async function problems(
  order: { readonly survey: string; readonly surveyId: string; readonly today: string },
  store: Store,
  language: Language,
) {
  const { checked, dataVersion } = await checkSurveys(store, order);
  const { stations } = await store.surveyRecords(order.surveyId, { lengths: false });
  const ids = new Map(stations.map((station) => [station.code, station.id]));
  return { dataVersion, problems: checked.map((one) => problemRow(one, ids, language)) };
}

async function reportPage(order: ReportOrder, language: ScreenLanguage, tools: WorkTools): Promise<string> {
  tools.onStep(serverSentence(language, 'step-estimating'));
  const input = await reportInput(tools.store, {
    ...defaultReportRequest,
    survey: order.survey,
    decision: order.decision,
    positionDetail: order.positions,
    classMm: order.classMm,
    programVersion: tools.version,
    generatedOn: order.today,
  });
  const document = tools.document();
  return renderReport(input, { language: catalogueLanguage(language), fonts: tools.fonts(), document });
}

async function importFile(order: ImportOrder, language: ScreenLanguage, tools: WorkTools) {
  const { store, newId, onStep } = tools;
  const { name, bytes, dryRun, signature } = order;
  onStep(serverSentence(language, 'step-reading', { name }));
  const read = await readTables([{ name, bytes }], null, ({ file, rows }) =>
    onStep(serverSentence(language, 'step-reading', { name: file, rows })),
  );
  onStep(serverSentence(language, 'step-comparing'));
  const { rows, totals } = read.value;
  const readTotals = tableNames
    .map((table) => ({ table, ...totals[table] }))
    .filter((total) => total.read > 0);
  const request = { rows, readTotals, readProblems: read.problems, mapping: null, dryRun };
  const result = await importRows(request, { store, signature, newId });
  return {
    written: result.written,
    totals: result.totals,
    problems: result.problems.map((problem) => ({
      code: problem.code,
      severity: problem.severity,
      message: sentence(catalogueLanguage(language), problem),
    })),
    dataVersion: await store.dataVersion(),
  };
}
