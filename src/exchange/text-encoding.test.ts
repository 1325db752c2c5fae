import { expect, test } from 'vitest';
import { encodingOf, textPieces } from './text-encoding.ts';

const table = 'survey,station\nA,Récif nord\n';
const utf8 = (text: string) => new TextEncoder().encode(text);

function utf16(text: string, littleEndian: boolean): Uint8Array {
  const view = new DataView(new ArrayBuffer(text.length * 2));
  for (let i = 0; i < text.length; i++) view.setUint16(i * 2, text.charCodeAt(i), littleEndian);
  return new Uint8Array(view.buffer);
}

// Authority: the encodings themselves: é is C3 A9 in UTF-8, E9 in Windows-1252; ’ is 92 in Windows-1252 (from memory).
test.each([
  ['UTF-8', utf8(table), 'utf-8'],
  ['UTF-8 with its mark', utf8(`\uFEFF${table}`), 'utf-8'],
  ['UTF-16 little-endian with its mark', utf16(`\uFEFF${table}`, true), 'utf-16le'],
  ['UTF-16 big-endian with its mark', utf16(`\uFEFF${table}`, false), 'utf-16be'],
  ['UTF-16 little-endian without a mark', utf16(table, true), 'utf-16le'],
  ['UTF-16 big-endian without a mark', utf16(table, false), 'utf-16be'],
  ['Windows-1252', Uint8Array.from(table, (letter) => letter.charCodeAt(0)), 'windows-1252'],
] as const)('%s is told from its bytes and gives the same text', (_name, bytes, encoding) => {
  expect(encodingOf(bytes)).toBe(encoding);
  expect([...textPieces(bytes, encoding, true)].join('')).toBe(table);
});

test('a curly apostrophe of an old spreadsheet is no control sign', () => {
  expect([...textPieces(Uint8Array.of(0x53, 0x92, 0x80), 'windows-1252', true)]).toEqual(['S’€']);
});

test('bytes with zeros that are no UTF-16 are no text', () => {
  expect(encodingOf(Uint8Array.of(0x53, 0x51, 0x4c, 0x00, 0x69, 0x74))).toBeNull();
  expect(encodingOf(Uint8Array.of())).toBe('utf-8');
});
