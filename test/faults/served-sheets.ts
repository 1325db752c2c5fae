/** Invented sheets as a screen sends them, and the server they are sent to. */

import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import type { SaveSheetRequest, Sheet } from '../../src/tasks/sheets/sheet-schemas.ts';
import { record } from '../store-records.ts';
import type { Frame } from './pieces-of-work.ts';

export interface SheetSize {
  readonly belts: number;
  /** Of every species on every belt. */
  readonly lengthsEach: number;
}

/** Station `save N`: every belt has a count of every species, with its lengths. */
export function servedSheet(
  n: number,
  { frame, size, newId }: { readonly frame: Frame; readonly size: SheetSize; readonly newId: () => string },
): Sheet {
  const { survey, stratum, species } = frame;
  const ids = { surveyId: survey.id, stratumId: stratum.id };
  const station = record('station', { id: newId(), ...ids, code: `save ${n}` });
  const transects = Array.from({ length: size.belts }, (_, b) =>
    record('transect', { id: newId(), stationId: station.id, code: String(b + 1) }),
  );
  const tallies = transects.flatMap((belt) =>
    species.map((one) => {
      const given = { id: newId(), transectId: belt.id, speciesId: one.id, count: size.lengthsEach };
      const lengths = Array.from({ length: size.lengthsEach }, (_, i) => ({
        lengthMm: 120 + ((n + 7 * i) % 90),
        n: 1,
        measure: null,
        photo: null,
      }));
      return record('tally', { ...given, lengths });
    }),
  );
  return { station, transects, tallies };
}

export interface Served {
  readonly url: string;
  readonly process: ChildProcess;
}

/** The program itself, as a person starts it; resolves when it says where it is. */
export function startServer(book: string, stderr: 'inherit' | 'pipe' = 'inherit'): Promise<Served> {
  const program = join(import.meta.dirname, '../../bin/slateline.js');
  const child = spawn(process.execPath, [program, 'serve', '--book', book, '--port', '0'], {
    stdio: ['ignore', 'pipe', stderr],
  });
  return new Promise((resolve, reject) => {
    let said = '';
    child.stdout!.on('data', (part: Buffer) => {
      said += part.toString();
      const url = /http:\S+/.exec(said)?.[0];
      if (url !== undefined && said.includes('\n')) resolve({ url, process: child });
    });
    child.once('exit', (code) => reject(new Error(`the server ended with ${code} before it began`)));
  });
}

export async function stopServer(served: Served): Promise<void> {
  const gone = new Promise((resolve) => served.process.once('exit', resolve));
  served.process.kill('SIGTERM');
  await gone;
}

/** Sends one save; throws when the server is gone, answers with the status otherwise. */
export async function sendSheet(url: string, request: SaveSheetRequest): Promise<number> {
  const { surveyId, id } = request.sheet.station;
  const response = await fetch(`${url}api/surveys/${surveyId}/sheets/${id}`, {
    method: 'PUT',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(request),
  });
  await response.text();
  return response.status;
}
