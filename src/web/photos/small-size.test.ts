import { describe, expect, it } from 'vitest';
import { smallSize } from './small-size.ts';

// By hand: the scale is the larger of 184/width and 138/height, at most 1.
describe('the small picture of a photo', () => {
  it.each([
    // 4000 x 3000: both 0.046
    ['lying', { width: 4000, height: 3000 }, { width: 184, height: 138 }],
    // 3000 x 4000: 184/3000 = 0.061333, 4000 x 0.061333 = 245.33
    ['upright', { width: 3000, height: 4000 }, { width: 184, height: 245 }],
    // 9000 x 1500: 138/1500 = 0.092, 9000 x 0.092 = 828
    ['very wide', { width: 9000, height: 1500 }, { width: 828, height: 138 }],
    ['smaller than the frame', { width: 40, height: 64 }, { width: 40, height: 64 }],
    // 20000 x 1: the scale is 1; nothing has no height
    ['a line', { width: 20_000, height: 1 }, { width: 20_000, height: 1 }],
  ])('that is %s keeps its shape and fills the frame', (_, photo, small) => {
    expect(smallSize(photo)).toEqual(small);
  });
});
