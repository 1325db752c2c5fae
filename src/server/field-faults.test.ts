import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { type TestServer, testServer } from '../../test/server-fixture.ts';
import { fieldSentence } from '../report/catalogue/field-words.ts';
import { clockOffsetSchema, wallClockSchema } from '../survey/photo-words.ts';
import { fieldFaults } from './field-faults.ts';

/** The sentence about the first thing that is wrong with what was sent. */
function said(schema: z.ZodType, sent: unknown, language: 'en' | 'fr' = 'en'): string {
  const { error } = schema.safeParse(sent);
  return fieldSentence(language, fieldFaults(error!.issues as never, sent)[0]!);
}

describe('a field that cannot be taken', () => {
  it.each([
    [z.string(), undefined, 'nothing was given; right would be a text'],
    [z.string(), null, 'nothing was given; right would be a text'],
    [z.string().trim().min(1), '  ', 'nothing was given; right would be a text'],
    [z.string(), 7, '“7” cannot stand here; right would be a text'],
    [z.number(), 'many', '“many” cannot stand here; right would be a number'],
    [z.coerce.number(), 'many', '“many” cannot stand here; right would be a number'],
    [z.int(), 2.5, '“2.5” cannot stand here; right would be a whole number'],
    [z.boolean(), 'yes', '“yes” cannot stand here; right would be true or false'],
    [z.string(), ['a'], 'a list cannot stand here; right would be a text'],
    [z.array(z.string()), {}, 'a group of fields cannot stand here; right would be a list'],
    [z.enum(['fixed', 'random']), 'drawn', '“drawn” cannot stand here; right would be fixed, random'],
    [z.number().min(0), -3, '“-3” cannot stand here; right would be 0 or more'],
    [z.number().positive(), 0, '“0” cannot stand here; right would be more than 0'],
    [z.number().max(8), 9, '“9” cannot stand here; right would be 8 or less'],
    [z.string().max(3), 'reef', '“reef” cannot stand here; right would be a text of at most 3 characters'],
    [z.array(z.int()).max(1), [1, 2], 'a list cannot stand here; right would be a list of at most 1'],
    [z.number().multipleOf(5), 7, '“7” cannot stand here; right would be a multiple of 5'],
    [
      z.iso.date(),
      '2026-13-01',
      '“2026-13-01” cannot stand here; right would be something of the form 2026-09-30',
    ],
    [wallClockSchema, '8h', '“8h” cannot stand here; right would be something of the form 2026-09-30T08:10'],
    [clockOffsetSchema, '12', '“12” cannot stand here; right would be something of the form +12:00'],
    [z.strictObject({}), { colour: 1 }, 'not known here: colour; leave it out'],
    [z.union([z.null(), z.number()]), 'x', '“x” cannot stand here; right would be a number'],
  ])('says what was given and what would be right: %#', (schema, sent, sentence) => {
    expect(said(schema, sent)).toBe(sentence);
  });

  it('that is long is told by its beginning', () => {
    const long = 'x'.repeat(500);
    expect(said(z.number(), long)).toBe(`“${'x'.repeat(60)}…” cannot stand here; right would be a number`);
  });

  // The library speaks English: "Invalid input: expected string, received undefined", "Too small: expected ...".
  it('is never told in the words of the library, whatever it finds', () => {
    const schema = z.object({
      a: z.string(),
      b: z.email(),
      c: z.map(z.string(), z.number()),
      d: z.set(z.string()).min(1),
      e: z.date(),
      f: z.literal('x'),
      g: z.union([z.literal('x'), z.object({ h: z.string() })]),
      i: z.record(z.enum(['k']), z.number()),
      j: z.any().refine(() => false, 'a rule of the library'),
    });
    const sent = { b: 'x', c: 1, d: new Set(), e: 'x', f: 'y', g: { h: 1 }, i: { l: 'x' }, j: 1 };
    const issues = schema.safeParse(sent).error!.issues;
    expect(issues.length).toBeGreaterThanOrEqual(9);
    for (const fault of fieldFaults(issues as never, sent)) {
      for (const language of ['en', 'fr'] as const) {
        const sentence = fieldSentence(language, fault);
        expect(sentence).not.toMatch(/expected|received|Invalid|Too (small|big)|rule of the library|\{/);
      }
    }
  });
});

describe('a request that cannot be taken', () => {
  const call = async (server: TestServer, language: string, by: string) =>
    (await server.call('GET', `/api/surveys/${server.survey.id}/densities?by=${by}&lang=${language}`)).body;

  it('says where, what and what would be right, in the language of the reader', async () => {
    const server = await testServer();
    expect((await call(server, 'en', 'island')).message).toBe(
      'the request cannot be read: one answer for each: “island” cannot stand here; right would be survey, stratum, site, zone, station',
    );
    expect((await call(server, 'fr', 'island')).message).toBe(
      'la demande ne peut pas être lue : une réponse par : « island » ne convient pas ici ; il faudrait survey, stratum, site, zone, station',
    );
  });

  it('names every field that is wrong, as programs call it', async () => {
    const server = await testServer();
    const sheet = server.newSheet('S1');
    const tally = { ...sheet.tallies[0]!, id: server.newId() };
    const far = { ...tally, id: server.newId(), transectId: server.newId() };
    const wrong = { ...sheet, tallies: [...sheet.tallies, tally, far] };
    const { status, body } = await server.save(wrong, null);
    expect([status, body.code]).toEqual([400, 'request-invalid']);
    expect(body.fields).toEqual([
      {
        field: 'sheet.tallies.1.speciesId',
        message: 'this species is counted already on this transect; count it once',
      },
      {
        field: 'sheet.tallies.2.transectId',
        message: expect.stringMatching(
          /^“[0-9a-f-]{36}” cannot stand here; right would be a transect of this sheet$/,
        ),
      },
    ]);
    const unsigned = await server.save(sheet, null, { who: '' });
    expect(unsigned.body.message).toBe(
      'the request cannot be read: who: nothing was given; right would be a text',
    );
  });

  it('that is no JSON is told so, and not where a program stumbled over it', async () => {
    const server = await testServer();
    const headers = { 'content-type': 'application/json', 'accept-language': 'fr' };
    const request = new Request('http://localhost:4180/api/surveys', {
      method: 'POST',
      headers,
      body: '{"a": ',
    });
    const body = (await (await server.app.request(request)).json()) as { message: string };
    expect(body.message).toBe(
      'la demande ne peut pas être lue : body : ce qui a été envoyé n’est pas du JSON',
    );
  });
});
