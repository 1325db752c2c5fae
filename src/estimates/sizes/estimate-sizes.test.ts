import { describe, expect, it } from 'vitest';
import { type SurveySketch, speciesNamed, surveyOf } from '../../../test/survey-builder.ts';
import { near } from '../../maths/nearness.ts';
import { estimateSizes, type SizesSettings } from './estimate-sizes.ts';

const sandfish = speciesNamed('sandfish');
const settings: SizesSettings = { by: 'survey', limitMm: 160, classMm: 50, confidence: 0.95 };
const sizesOf = (sketch: SurveySketch, more: Partial<SizesSettings> = {}) =>
  estimateSizes(surveyOf(sketch), sandfish, { ...settings, ...more });

const belt = (count: number, ...lengthsMm: number[]) => ({
  counts: { sandfish: count },
  lengthsMm: { sandfish: lengthsMm },
});

describe('sizes', () => {
  it('of two strata weigh animals by the area they stand for', () => {
    const [answer] = sizesOf({
      areasHa: { reef: 30, flat: 10 },
      stations: [
        { code: 'A', stratum: 'reef', belts: [belt(2, 100, 200)] },
        { code: 'B', stratum: 'flat', belts: [belt(4, 200, 200)] },
      ],
    });
    // by hand: reef 30 ha x 2 animals = 60, half of each length; flat 10 ha x 4 = 40, all of 200 mm
    near(answer!.meanLengthMm, (30 * 100 + 30 * 200 + 40 * 200) / 100, 1e-12);
    near(answer!.shareAtLeast!.share, 0.7, 1e-12);
    expect(answer!.animals).toBe(6);
    expect(answer!.measured).toBe(4);
    near(
      answer!.classes.reduce((total, one) => total + one.animals, 0),
      6,
      1e-12,
    );
    near(
      answer!.classes.reduce((total, one) => total + one.share, 0),
      1,
      1e-12,
    );
  });

  it('from one station have no spread and say so; they are never given a standard error of zero', () => {
    const [answer] = sizesOf({
      areasHa: { reef: 30 },
      stations: [
        { code: 'A', stratum: 'reef', belts: [belt(2, 100, 200)] },
        { code: 'B', stratum: 'reef', belts: [{ noneSeen: true }] },
      ],
    });
    near(answer!.meanLengthMm, 150, 1e-12);
    expect(answer).toMatchObject({ standardErrorMm: null, reason: { code: 'lengths-from-one-station' } });
    expect(answer!.shareAtLeast).toMatchObject({ standardError: null, interval: null });
  });

  it('of animals that nobody measured are unknown', () => {
    const [answer] = sizesOf({
      areasHa: { reef: 30 },
      stations: [{ code: 'A', stratum: 'reef', belts: [belt(2)] }],
    });
    expect(answer).toMatchObject({
      animals: 2,
      measured: 0,
      meanLengthMm: null,
      quantilesMm: null,
      classes: [],
    });
    expect(answer!.reason!.code).toBe('none-measured');
  });

  it('of a belt that was only counted are borrowed from its station, and the number of animals is told', () => {
    const [answer] = sizesOf({
      areasHa: { reef: 30 },
      stations: [
        { code: 'A', stratum: 'reef', belts: [belt(1, 100), belt(3)] },
        { code: 'B', stratum: 'reef', belts: [belt(1, 300)] },
      ],
    });
    expect(answer!.borrowedAnimals).toBe(3);
    // by hand: 4 animals of 100 mm on 160 m2 and 1 of 300 mm on 80 m2: weights 4/160 and 1/80
    near(answer!.meanLengthMm, (100 * (4 / 160) + 300 / 80) / (4 / 160 + 1 / 80), 1e-12);
  });

  it('give the class that a limit lies in to the animals at or above it', () => {
    const [answer] = sizesOf(
      { areasHa: { reef: 30 }, stations: [{ code: 'A', stratum: 'reef', belts: [belt(2, 160, 159)] }] },
      { limitMm: 160 },
    );
    near(answer!.shareAtLeast!.share, 0.5, 1e-12);
  });
});
