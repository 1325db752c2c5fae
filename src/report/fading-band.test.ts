import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { densityAxis } from './density-axis.ts';
import { answerInBrief, answerSentence, zeroSentence } from './density-words.ts';
import { fadingBands, fewAnimalsExplained } from './fading-band.ts';
import { inkStops } from './ink-stops.ts';
import { fixtureReport } from './report-fixture.ts';

const survey = fixtureReport().surveys[1]!;
const rows = survey.densityBySurvey.map((answer) => ({ label: answer.species, note: 'whole area', answer }));
const { document } = parseHTML('<!doctype html><html></html>');
const frame = { width: 680, name: 'test', language: 'en' as const, inWords: 'six species', document };

test('the bands of a survey look as they were looked at', async () => {
  await expect(fadingBands(rows, frame)).toMatchFileSnapshot('../../test/golden/fading-bands.svg');
  const narrow = fadingBands(rows, { ...frame, width: 328 });
  await expect(narrow).toMatchFileSnapshot('../../test/golden/fading-bands-phone.svg');
});

test('a band of 5 and one of 5000 animals per hectare share one axis', async () => {
  const model = rows.find((row) => row.answer.species === 'Holothuria atra')!;
  const scaled = [5, 5000].map((densityPerHa) => {
    const factor = densityPerHa / model.answer.densityPerHa!;
    const belief = model.answer.belief!;
    const intervalPerHa = model.answer.intervalPerHa!.map((end) => end * factor) as unknown as readonly [
      number,
      number,
    ];
    const moved = {
      weight: belief.weight,
      densityPerHa: belief.densityPerHa.map((density) => density * factor),
    };
    return {
      label: `${densityPerHa} per ha`,
      note: '',
      answer: { ...model.answer, densityPerHa, intervalPerHa, belief: moved },
    };
  });
  await expect(fadingBands(scaled, frame)).toMatchFileSnapshot(
    '../../test/golden/fading-bands-wide-range.svg',
  );
});

test('a tick left of the darkest part is explained where few animals were seen, and only there', () => {
  const model = rows.find((row) => row.answer.species === 'Holothuria atra')!;
  const belief = { densityPerHa: [0, 1, 2, 3, 4], weight: [0, 0.3, 0.6, 1, 0.4] };
  const few = { ...model, answer: { ...model.answer, animals: 1, densityPerHa: 1.2, belief } };
  // by hand: the darkest part is at 3 per ha, the tick at 1.2
  expect(fewAnimalsExplained([model, few])).toContain('more often above');
  expect(fewAnimalsExplained([{ ...few, answer: { ...few.answer, densityPerHa: 3 } }])).toBe('');
  expect(fewAnimalsExplained([{ ...few, answer: { ...few.answer, animals: 50 } }])).toBe('');
  expect(fewAnimalsExplained([model])).toBe('');
});

test('a figure is the same whatever was drawn before it, and brings no style of its own', () => {
  const first = fadingBands(rows, frame);
  fadingBands(rows.slice(1), { ...frame, name: 'between' });
  expect(fadingBands(rows, frame)).toBe(first);
  expect(first).not.toMatch(/<style|class="plot|clip-path|\d\.\d{4}/);
});

test('equal values give equal bytes', () => {
  expect(fadingBands(rows, frame)).toBe(fadingBands(structuredClone(rows), frame));
});

test('where nothing was seen the band is darkest at zero and only fades', () => {
  const zero = survey.densityBySurvey.find((answer) => answer.species === 'Holothuria fuscogilva')!;
  const inks = inkStops(zero.belief!, densityAxis({ highestPerHa: 20, animalPerHa: 1 })).map(
    (stop) => stop.ink,
  );
  expect(inks[0]).toBe(Math.max(...inks));
  for (let i = 1; i < inks.length; i++) expect(inks[i]!).toBeLessThanOrEqual(inks[i - 1]!);
});

test('a species that was not recorded is never called absent, and has both its bounds', () => {
  const zero = survey.densityBySurvey.find((answer) => answer.species === 'Holothuria fuscogilva')!;
  // the bounds are those of the answer; METHODS c5 gives their formulas
  const given = {
    ...zero,
    scatteredBoundPerHa: 5.94,
    intervalPerHa: [0, 8.67] as const,
    stations: 21,
    searchedAreaM2: 5040,
  };
  expect(zeroSentence(given, 0.95)).toBe(
    'not recorded at any of 21 stations (5\u202f040 m² searched); 95\u00a0% sure below 5.9 per ha if scattered, below 8.7 if clumped (k\u00a00.2)',
  );
  expect(answerSentence(given, 0.95, 'en')).not.toContain('absent');
});

test('a lone station has an estimate and says that there is no spread', () => {
  const lone = survey.densityByStratum.find((a) => a.reason?.code === 'lone-station' && a.animals > 0);
  const answer = lone ?? { ...survey.densityByStratum[2]!, densityPerHa: 42, animals: 2 };
  expect(answerInBrief(answer)[1]).toContain('no spread');
});

test('a held answer shows its reason in the place of its band, and no number', () => {
  const held = rows.filter((row) => row.answer.reason?.code === 'unresolved-stations');
  const drawn = fadingBands(held, frame);
  expect(drawn).toContain('Held until it is known');
  expect(drawn).not.toContain('linearGradient');
});

test('a number that somebody let through carries the name and the reason with it', () => {
  const known = survey.densityBySurvey.find((answer) => answer.species === 'Holothuria atra')!;
  const parameters = { who: 'Officer A', why: 'both kinds lie on one reef', held: 'mixed-selection' };
  const text = answerSentence({ ...known, cautions: [{ code: 'accepted', parameters }] }, 0.95, 'en');
  expect(text).toContain(
    '. Let through by Officer A in spite of random and hand-picked stations standing together, who gave as reason: both kinds lie on one reef',
  );
});

test('hand-picked stations speak for the stations visited, and the sentence says so', () => {
  const known = survey.densityBySurvey.find((answer) => answer.species === 'Holothuria atra')!;
  const reason = { code: 'hand-picked-only' as const, parameters: { where: 'north flat' } };
  const answer = { ...known, reason, intervalPerHa: null, totalAnimals: null, totalInterval: null };
  expect(answerSentence(answer, 0.95, 'en')).toContain('speaks for no other place');
});
