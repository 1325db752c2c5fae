/** The share of animals that may be taken by their size: typed, every one, or measured. */

import type { SizesAnswer } from '../../estimates/answers.ts';
import type { LegalShare } from '../../estimates/harvest/harvest-answer.ts';
import { estimateSizes } from '../../estimates/sizes/estimate-sizes.ts';
import type { Reason } from '../../survey/message.ts';
import type { SurveyInHand } from '../../survey/observation.ts';
import type { Species } from '../../survey/words.ts';
import type { HarvestRequest } from '../harvest.ts';

/** Where the stock lies: the whole survey, or one of the two halves that a zone makes of it. */
export interface Ground {
  readonly survey: SurveyInHand;
  readonly by: 'survey' | 'zone';
  readonly name: string;
}

/** 0 millimetres where every size may be taken. */
export interface Limit {
  readonly mm: number;
  readonly source: string;
}

export function legalShare(
  species: Species,
  request: HarvestRequest,
  ground: Ground,
  limit: Limit | null,
): LegalShare | Reason {
  const typed = { interval: null, cv: null, measured: null };
  if (request.legalShare !== null) {
    const { value, source } = request.legalShare;
    return { ...typed, limitMm: null, source, typed: true, share: value };
  }
  if (limit === null) return { code: 'no-size-limit', parameters: { species: species.name } };
  if (limit.mm === 0)
    return { ...typed, limitMm: null, source: 'every size may be taken', typed: true, share: 1 };
  return measuredShare(species, ground, limit, request.choices.confidence);
}

function measuredShare(
  species: Species,
  ground: Ground,
  limit: Limit,
  confidence: number,
): LegalShare | Reason {
  const settings = { by: ground.by, limitMm: limit.mm, classMm: 20, confidence: 2 * confidence - 1 };
  const sizes: SizesAnswer | undefined = estimateSizes(ground.survey, species, settings).find(
    (one) => one.scope.name === ground.name,
  );
  const share = sizes?.shareAtLeast ?? null;
  if (sizes === undefined || share === null) {
    return sizes?.reason ?? { code: 'none-measured', parameters: { species: species.name } };
  }
  return {
    limitMm: limit.mm,
    source: limit.source,
    typed: false,
    share: share.share,
    interval: share.interval,
    cv: share.standardError === null || share.share === 0 ? null : share.standardError / share.share,
    measured: sizes.measured,
  };
}
