/** What the screens can have worked out on this device, and what the result then rests on. */

import { type DensitySettings, defaultDensitySettings } from '../../estimates/density/density-settings.ts';
import type { ScreenLanguage } from '../../report/catalogue/server-words.ts';
import type { Survey } from '../../survey/words.ts';
import type { SizesRequest } from '../../tasks/estimate-sizes.ts';
import type { ReadOrder } from '../../tasks/sheets/read-orders.ts';

/** As the address of the server says it, without the survey. */
export type HereOrder =
  | {
      readonly task: 'densities';
      readonly settings: Partial<DensitySettings>;
    }
  | {
      readonly task: 'sizes';
      readonly sizes: Pick<SizesRequest, 'by' | 'limitMm' | 'confidence'>;
    }
  | { readonly task: 'problems' | 'stations' }
  | { readonly task: 'explain'; readonly species: string };

export interface HereAsked {
  readonly surveyId: string;
  readonly order: HereOrder;
  readonly language: ScreenLanguage;
  /** ISO day on the wall of this device. */
  readonly today: string;
}

export interface HereBasis {
  /** When the book last said what it holds, by the clock of this device. */
  readonly bookAtMs: number;
  /** Sheets and answers that wait here and are in the numbers. */
  readonly sheets: number;
  readonly answers: number;
  /** Sheets that went into the book after it last said what it holds; in the numbers as well. */
  readonly sentSince: number;
  /** Those that need a person first: in no number. */
  readonly leftOut: number;
}

export interface HereAnswer {
  readonly value: unknown;
  readonly basis: HereBasis;
}

export function orderFor(
  order: HereOrder,
  { survey, today }: { readonly survey: Survey; readonly today: string },
): ReadOrder {
  const { name, id: surveyId } = survey;
  switch (order.task) {
    case 'densities':
      return {
        task: 'densities',
        survey: name,
        species: null,
        settings: { ...defaultDensitySettings, ...order.settings },
      };
    case 'sizes':
      return { task: 'sizes', request: { survey: name, species: null, classMm: 20, ...order.sizes } };
    case 'problems':
      return { task: 'problems', survey: name, surveyId, today };
    case 'stations':
      return { task: 'stations', surveyId };
    case 'explain':
      return { task: 'explain', request: { survey: name, species: order.species, station: null } };
  }
}
