/** Typed sheets as a file. They keep the identity of their request: brought in twice, or sent from both laptops, each is written once. */

import * as z from 'zod';
import { saveSheetSchema } from '../../tasks/sheets/sheet-schemas.ts';
import type { WaitingSheet } from './queue.ts';

const fileSchema = z.object({
  format: z.literal('slateline sheets 1'),
  sheets: z.array(z.object({ typedAt: z.string(), request: saveSheetSchema })),
});

export function sheetFileText(sheets: readonly WaitingSheet[]): string {
  const content = sheets.map(({ typedAt, request }) => ({ typedAt, request }));
  return `${JSON.stringify({ format: 'slateline sheets 1', sheets: content }, null, 1)}\n`;
}

/** Null when the file is no such file. */
export function readSheetFile(text: string): readonly WaitingSheet[] | null {
  const read = fileSchema.safeParse(parsed(text));
  if (!read.success) return null;
  return read.data.sheets.map(({ typedAt, request }) => ({
    requestId: request.requestId,
    surveyId: request.sheet.station.surveyId,
    stationId: request.sheet.station.id,
    stationCode: request.sheet.station.code,
    request,
    typedAt,
    state: 'waiting',
    message: null,
    conflict: null,
  }));
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
