/**
 * The work of the screens that reads whole surveys, as orders that can be carried to another thread and back:
 * plain values in, plain values out. Saving a sheet never waits behind one of them.
 */

import { readTables } from '../../exchange/read-tables.ts';
import { type Language, sentence } from '../../report/catalogue/sentence.ts';
import { type ScreenLanguage, serverSentence } from '../../report/catalogue/server-words.ts';
import { type EmbeddedFont, type ReportTools, renderReport } from '../../report/page.ts';
import type { Signature, Store } from '../../survey/store.ts';
import { tableNames } from '../../survey/table-rows.ts';
import { type HistoryRequest, history } from '../history.ts';
import { importRows } from '../import/import-rows.ts';
import { defaultReportRequest, reportInput } from '../report.ts';
import { type ReadOrder, readRows } from './read-orders.ts';
import { surveyRecords } from './survey-records.ts';

export type WorkOrder = { readonly language: ScreenLanguage } & (
  | ReadOrder
  | { readonly task: 'records'; readonly surveyId: string }
  | { readonly task: 'history'; readonly request: HistoryRequest }
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
  switch (order.task) {
    case 'records':
      return surveyRecords(store, order.surveyId);
    case 'history':
      return history(store, order.request);
    case 'import':
      return importFile(order, order.language, tools);
    default:
      return readRows(order, order.language, store);
  }
}

/** Checks, reasons and refusals speak the language of the screen. */
export function catalogueLanguage(language: ScreenLanguage): Language {
  return language;
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
