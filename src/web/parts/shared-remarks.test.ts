import { describe, expect, it } from 'vitest';
import { type AnswerRemarks, type Remark, sharedRemarks } from './shared-remarks.ts';

const remark = (text: string): Remark => ({ text, isLeftOut: text.startsWith('belt') });
const answer = (place: string, ...texts: string[]): AnswerRemarks => ({ place, remarks: texts.map(remark) });
const texts = (remarks: readonly Remark[]) => remarks.map(({ text }) => text);

/** What a reader is told of one answer, wherever it stands. */
function toldOf(answers: readonly AnswerRemarks[], i: number): string[] {
  const { ofAll, ofPlaces, own } = sharedRemarks(answers);
  const ofIts = ofPlaces.filter(({ places }) => places.includes(answers[i]!.place));
  return [...texts(ofAll), ...ofIts.flatMap(({ remarks }) => texts(remarks)), ...texts(own[i]!)].sort();
}

describe('remarks on answers', () => {
  it('are said once where every answer has them, and beside the answer where only it has them', () => {
    const answers = [
      answer('North', 'belt F2 lost', 'ratio of sums', 'few stations'),
      answer('North', 'ratio of sums', 'belt F2 lost'),
    ];
    const { ofAll, ofPlaces, own } = sharedRemarks(answers);
    expect(texts(ofAll)).toEqual(['belt F2 lost', 'ratio of sums']);
    expect(ofPlaces).toEqual([]);
    expect(own.map(texts)).toEqual([['few stations'], []]);
  });

  it('that every answer of a place has are said once for the place', () => {
    const answers = [
      answer('flat', 'belt F2 lost', 'few stations'),
      answer('flat', 'belt F2 lost'),
      answer('slope', 'few stations'),
      answer('slope', 'few stations'),
    ];
    const { ofAll, ofPlaces, own } = sharedRemarks(answers);
    expect(ofAll).toEqual([]);
    expect(ofPlaces.map(({ places, remarks }) => [places, texts(remarks)])).toEqual([
      [['flat'], ['belt F2 lost']],
      [['slope'], ['few stations']],
    ]);
    // The remark of the slope is still the own one of an answer of the flat.
    expect(own.map(texts)).toEqual([['few stations'], [], [], []]);
  });

  it('of several whole places name those places together', () => {
    const rest = [answer('slope'), answer('slope')];
    const answers = [
      ...['bay', 'bay', 'cape', 'cape'].map((place) => answer(place, 'ratio of sums')),
      ...rest,
    ];
    expect(sharedRemarks(answers).ofPlaces).toEqual([
      { places: ['bay', 'cape'], remarks: [remark('ratio of sums')] },
    ]);
  });

  it('of an answer that stands alone, or alone in its place, are its own', () => {
    expect(sharedRemarks([answer('flat', 'few stations')]).own.map(texts)).toEqual([['few stations']]);
    const two = [answer('flat', 'few stations'), answer('slope')];
    expect(sharedRemarks(two).own.map(texts)).toEqual([['few stations'], []]);
    expect(sharedRemarks([])).toEqual({ ofAll: [], ofPlaces: [], own: [] });
  });

  // Invariance: whatever is shared, an answer is told exactly what it had. Every case of 4 answers at 2 places with 3 remarks.
  it('are neither lost nor said of an answer that has them not', () => {
    const all = ['a', 'b', 'c'];
    for (let bits = 0; bits < 2 ** 12; bits += 1) {
      const answers = ['flat', 'flat', 'slope', 'slope'].map((place, i) =>
        answer(place, ...all.filter((_, j) => (bits >> (3 * i + j)) & 1)),
      );
      answers.forEach((one, i) => {
        expect(toldOf(answers, i)).toEqual(texts(one.remarks));
      });
    }
  });
});
