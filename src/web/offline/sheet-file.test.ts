import { describe, expect, it } from 'vitest';
import { identityFrom, record } from '../../../test/store-records.ts';
import type { WaitingSheet } from './queue.ts';
import { readSheetFile, sheetFileText } from './sheet-file.ts';

const newId = identityFrom(71);

function waiting(): WaitingSheet {
  const surveyId = newId();
  const station = record('station', { id: newId(), surveyId, stratumId: newId(), code: 'S1' });
  const requestId = newId();
  const sheet = { station, transects: [], tallies: [] };
  return {
    requestId,
    surveyId,
    stationId: station.id,
    stationCode: 'S1',
    request: { requestId, base: null, who: 'Recorder A', why: 'sheet typed', device: null, sheet },
    typedAt: '2026-09-30T18:00:00.000Z',
    state: 'conflict',
    message: 'changed',
    conflict: null,
  };
}

describe('typed sheets taken along as a file', () => {
  // Invariance: the identity of the request decides that a sheet brought twice is written once.
  it('wait for the book again where they are brought in, with the identity of their request', () => {
    const one = waiting();
    expect(readSheetFile(sheetFileText([one]))).toEqual([{ ...one, state: 'waiting', message: null }]);
  });

  it('are refused whole when the file is none of ours or was cut short', () => {
    const text = sheetFileText([waiting()]);
    for (const other of ['', '{}', text.slice(0, -20), text.replace('sheets 1', 'sheets 9')]) {
      expect(readSheetFile(other)).toBeNull();
    }
  });
});
