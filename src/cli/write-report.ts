/** Renders the report page and puts it on disk whole or not at all. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';
import { parseHTML } from 'linkedom';
import type { Language } from '../report/catalogue/language.ts';
import { type EmbeddedFont, renderReport } from '../report/page.ts';
import type { Store } from '../survey/store.ts';
import { type ReportRequest, reportInput } from '../tasks/report.ts';
import type { Io } from './io.ts';
import { programVersion } from './program-version.ts';
import { writeWhole } from './write-whole.ts';

export interface ReportOrder extends Omit<ReportRequest, 'programVersion' | 'generatedOn'> {
  readonly book: string;
  readonly to: string | null;
  /** English where none is given. */
  readonly language?: Language;
}

export interface WrittenReport {
  readonly path: string;
  readonly bytes: number;
  readonly survey: string;
  readonly dataVersion: string;
}

export async function writeReport(io: Io, store: Store, order: ReportOrder): Promise<WrittenReport> {
  const generatedOn = localDay(io.now());
  const input = await reportInput(store, { ...order, programVersion: programVersion(), generatedOn });
  // Plot draws in a document; outside a browser this stand-in is it
  const { document } = parseHTML('<!doctype html><html></html>');
  const page = renderReport(input, { language: order.language ?? 'en', fonts: reportFonts(), document });
  const path = order.to ?? join(order.book, 'report.html');
  writeWhole(resolve(io.cwd, path), page);
  const survey = input.surveys.at(-1)!.inHand.survey.name;
  return { path, bytes: Buffer.byteLength(page), survey, dataVersion: input.dataVersion };
}

/** The calendar day on the officer's wall, not the one in Greenwich. */
function localDay(now: Date): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

export function reportFonts(): readonly EmbeddedFont[] {
  const require = createRequire(import.meta.url);
  const font = (weight: 400 | 600, file: string): EmbeddedFont => ({
    weight,
    format: 'truetype',
    base64: readFileSync(require.resolve(`@expo-google-fonts/source-sans-3/${file}`)).toString('base64'),
  });
  return [
    font(400, '400Regular/SourceSans3_400Regular.ttf'),
    font(600, '600SemiBold/SourceSans3_600SemiBold.ttf'),
  ];
}
