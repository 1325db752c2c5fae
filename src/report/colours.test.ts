import { expect, test } from 'vitest';
import { colours } from './colours.ts';

/** Contrast of two colours by WCAG 2.2 (relative luminance, from memory). */
function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].toSorted((a, b) => b - a) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

test('every colour that writes text can be read in sunlight: seven to one on paper', () => {
  // by definition: black on white is 21
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
  for (const text of [colours.ink, colours.softInk, colours.question]) {
    expect(contrast(text, colours.paper)).toBeGreaterThanOrEqual(7);
  }
});
