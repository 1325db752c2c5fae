/** Signs and their words in columns below the map. */

import * as Plot from '@observablehq/plot';
import type { PlannedStation } from '../../survey/plan-words.ts';
import type { Language } from '../catalogue/language.ts';
import { planPagePhrases } from '../catalogue/plan-page-phrases.ts';
import { colours } from '../colours.ts';
import { textWidth } from '../svg.ts';
import { signOf, stationKind, stationKinds } from './plan-map-signs.ts';

interface Legend {
  readonly strata: readonly { readonly name: string; readonly colour: string }[];
  readonly stations: readonly PlannedStation[];
  /** Null where no mask took anything. */
  readonly maskFill: string | null;
  readonly language: Language;
}

export function legendMarks(
  { strata, stations, maskFill, language }: Legend,
  room: { readonly width: number; readonly left: number; readonly below: number },
): { readonly marks: Plot.Markish[]; readonly height: number } {
  const { where } = planPagePhrases(language);
  const kinds = stationKinds.filter((kind) => stations.some((one) => stationKind(one) === kind));
  const ground = { symbol: 'square', r: 7 } as const;
  const entries: { readonly words: string; readonly sign: Plot.DotOptions }[] = [
    ...strata.map(({ name, colour }) => ({
      words: name,
      sign: { ...ground, fill: colour, fillOpacity: 0.3, stroke: colour, strokeWidth: 1.8 },
    })),
    ...(maskFill !== null
      ? [
          {
            words: where.masked,
            sign: { ...ground, fill: maskFill, stroke: colours.softInk },
          },
        ]
      : []),
    ...kinds.map((kind) => ({ words: where.kinds[kind], sign: signOf(kind, colours.rule) })),
  ];
  const longest = Math.max(...entries.map((entry) => textWidth(entry.words, 12)));
  const columns = Math.max(1, Math.min(4, Math.floor(room.width / (longest + 40))));
  const corner = { frameAnchor: 'bottom-left' } as const;
  const marks = entries.flatMap(({ words, sign }, i) => {
    const dx = 10 - room.left + (i % columns) * (room.width / columns);
    const dy = room.below + 10 + Math.floor(i / columns) * 22;
    return [
      Plot.dot([0], { ...corner, ...sign, dx, dy }),
      Plot.text([words], {
        ...corner,
        text: (word: string) => word,
        ...{ dx: dx + 15, dy, textAnchor: 'start', lineAnchor: 'middle' },
      }),
    ];
  });
  return { marks, height: Math.ceil(entries.length / columns) * 22 + 4 };
}
