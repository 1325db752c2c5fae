import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import type { DensityAnswer } from '../estimates/answers.ts';
import { fixtureReport } from './report-fixture.ts';
import { timeAxis } from './time-axis.ts';
import { type TimeRow, timeBands, timeBandsFit } from './time-bands.ts';

const known = fixtureReport()
  .surveys.at(-1)!
  .densityBySurvey.find(({ densityPerHa, belief }) => densityPerHa !== null && densityPerHa > 0 && belief)!;
const zero = fixtureReport()
  .surveys.at(-1)!
  .densityBySurvey.find(({ densityPerHa }) => densityPerHa === 0)!;
const unknown: DensityAnswer = {
  ...known,
  densityPerHa: null,
  intervalPerHa: null,
  belief: null,
  reason: { code: 'no-station', parameters: { where: 'north flat' } },
};

function row(
  year: number,
  answer: DensityAnswer,
  countedBefore: TimeRow['countedBefore'] = 'alike',
): TimeRow {
  return { survey: `Reefs ${year}`, from: `${year}-03-01`, to: `${year}-03-01`, answer, countedBefore };
}

function drawn(rows: readonly TimeRow[], width = 328) {
  const svg = timeBands(rows, { width, name: 'time', language: 'en', inWords: 'in words' });
  const { document } = parseHTML(`<body>${svg}</body>`);
  const numbers = (selector: string, name: string) =>
    [...document.querySelectorAll(selector)].map((one) => Number(one.getAttribute(name)));
  return {
    svg,
    joins: document.querySelectorAll('.join').length,
    middles: numbers('rect', 'x').map((x, i) => x + numbers('rect', 'width')[i]! / 2),
    writing: [...document.querySelectorAll('text')].map((one) => one.textContent),
  };
}

test('the figure is as it was looked at', async () => {
  const { svg } = drawn([
    row(2018, known, 'not known'),
    row(2020, { ...known, densityPerHa: 0.7 * known.densityPerHa! }),
    row(2024, unknown),
    row(2026, zero, 'otherwise'),
  ]);
  await expect(svg).toMatchFileSnapshot('../../test/golden/time-bands.svg');
});

test('a survey twice as late stands twice as far: time is not a list', () => {
  // By hand: 2016, 2020 and 2022 are 1461 and 730 days apart (leap days of 2016 after March counted in 2020).
  const { middles } = drawn([row(2016, known, 'not known'), row(2020, known), row(2022, known)]);
  const [first, second, third] = middles as [number, number, number];
  expect((second - first) / (third - second)).toBeCloseTo(1461 / 730, 1);
});

test('a line joins two estimates counted alike, and no others', () => {
  expect(drawn([row(2020, known, 'not known'), row(2022, known), row(2024, known)]).joins).toBe(2);
  // Counted otherwise, or nobody can say how: no line either way.
  expect(drawn([row(2020, known, 'not known'), row(2022, known, 'not known'), row(2024, known)]).joins).toBe(
    1,
  );
  expect(drawn([row(2020, known, 'not known'), row(2022, known, 'otherwise'), row(2024, known)]).joins).toBe(
    1,
  );
});

test('no line goes through a survey without an answer or without animals', () => {
  expect(drawn([row(2020, known, 'not known'), row(2022, unknown), row(2024, known)]).joins).toBe(0);
  expect(drawn([row(2020, known, 'not known'), row(2022, zero), row(2024, known)]).joins).toBe(0);
});

test('each survey is named under its band with its interval and stations, while there is room', () => {
  const three = drawn([row(2020, known, 'not known'), row(2022, zero), row(2024, unknown)]);
  expect(three.writing).toContain('Reefs 2020');
  expect(three.writing).toContain('not recorded');
  expect(three.writing).toContain('no answer yet');
  expect(three.writing).toContain(`${known.stationsWithSpecies} of ${known.stations} st.`);
  expect(timeBandsFit(4, 328)).toBe(true);
  expect(timeBandsFit(5, 328)).toBe(false);
  const five = [2018, 2020, 2022, 2024, 2026].map((year) => row(year, known));
  expect(drawn(five).writing).not.toContain('Reefs 2020');
});

test('surveys of one month stand beside each other and keep their words apart', () => {
  const rows = [
    { ...row(2026, known, 'not known'), from: '2026-03-01', to: '2026-03-03' },
    { ...row(2026, known), from: '2026-03-10', to: '2026-03-12', survey: 'Reefs, after the storm' },
    { ...row(2027, known), from: '2029-03-10', to: '2029-03-12' },
  ];
  const { document } = parseHTML(
    `<body>${timeBands(rows, { width: 328, name: 'time', language: 'en', inWords: '' })}</body>`,
  );
  const places = [...document.querySelectorAll('text[font-weight="600"]')].map((one) =>
    Number(one.getAttribute('x')),
  );
  expect(places.length).toBe(3);
  expect(places[1]! - places[0]!).toBeGreaterThanOrEqual(79);
  expect(Math.max(...places)).toBeLessThanOrEqual(328 - 40);
});

test('years are written where the surveys are years apart, months where they are not', () => {
  const labels = (...days: string[]) => timeAxis(days, { ticks: 6 }).ticks.map(({ label }) => label);
  expect(labels('2022-09-10', '2026-09-10')).toEqual(['2023', '2024', '2025', '2026']);
  expect(labels('2026-03-15', '2026-06-20')).toEqual(['04/2026', '05/2026', '06/2026']);
  expect(labels('1990-01-01', '2026-09-10').length).toBeLessThanOrEqual(6);
  expect(timeAxis(['2026-03-15'], { ticks: 6 }).at('2026-03-15')).toBe(0.5);
});
