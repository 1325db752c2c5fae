import { expect, test } from 'vitest';
import { bandAxis } from './band-axis.ts';
import { bandAxisFigure, bandFigure } from './band-figure.ts';

const belief = { densityPerHa: [0, 5, 10, 20], weight: [1, 0.5, 0.2, 0] };
const none = { densityPerHa: 0, intervalPerHa: [0, 18] as [number, number], scatteredBoundPerHa: 9, belief };
const axis = bandAxis([{ ...none, searchedAreaM2: 3000 }]);
const size = { width: 400, axis, name: 'band-1', inWords: 'not recorded' };

test('none recorded is a band from zero with two bounds, the dotted one if scattered', () => {
  const svg = bandFigure(none, size);
  expect(svg).toContain('fill="url(#band-1)"');
  // By hand: zero is no end of an interval, so of the interval one hair line is left, and the dotted one.
  expect(svg.match(/stroke-width="0.9"/g)).toHaveLength(2);
  expect(svg.match(/stroke-dasharray/g)).toHaveLength(1);
  // The first stop is the darkest: the belief falls from zero.
  const inks = [...svg.matchAll(/stop-opacity="([\d.]+)"/g)].map((match) => Number(match[1]));
  expect(inks[0]).toBe(Math.max(...inks));
});

test('nothing in a band needs a style', () => {
  expect(bandFigure(none, size)).not.toMatch(/style=|<style/);
});

test('without an answer there is neither tick nor band', () => {
  const svg = bandFigure(
    { densityPerHa: null, intervalPerHa: null, scatteredBoundPerHa: null, belief: null },
    size,
  );
  expect(svg).not.toContain('linearGradient');
  expect(svg).not.toContain('stroke-width="2.4"');
});

test('numbers of the axis that would run into each other are left out', () => {
  const words = { inWords: 'axis', number: (perHa: number) => String(perHa) };
  const texts = (width: number) => bandAxisFigure(axis, width, words).match(/<text/g)?.length ?? 0;
  expect(texts(60)).toBeLessThan(texts(900));
  expect(texts(900)).toBe(axis.ticksPerHa.length);
});
