/** How a plan is said, on its page and at the keyboard: draw, choice, replacement, bearings, spread. Numbers come formatted. */

import { planPhrasesFr } from './french/plan-phrases.ts';
import type { Language } from './language.ts';
import type { SameShape } from './same-shape.ts';

const english = {
  methods: {
    acceptance: 'spread random positions (balanced acceptance sampling)',
    pivotal: 'spread random positions (local pivotal method)',
  },
  selections: { random: 'random', fixed: 'fixed', 'hand-picked': 'hand-picked' },
  spare: 'spare',
  dropped: 'dropped',
  inPlaceOf: (code: string) => `in place of ${code}`,
  /** The words that the plan keeps about how its stations were divided. */
  allocation: (kept: string) => kept,
  model: (model: string, valid: string) => `declination by ${model}${valid}`,
  valid: (fromYear: string, toYear: string) => ` (holds from ${fromYear} to ${toYear})`,
  bearings: (first: string, last: string) => `${first} to ${last}`,
  spread: {
    head: 'Spread over the ground (0: every station stands for the same ground):',
    balance: (stratum: string, drawn: string, simple: string, share: string, draws: string) =>
      `${stratum}: ${drawn}, simple random ${simple} on average; ${share} of ${draws} such draws are spread as well`,
    apart: (metres: string, passed: string) => `At least ${metres} m apart: ${passed}.`,
    nonePassed: 'no position was passed over',
    onePassed: '1 position was passed over as too near to another',
    passed: (n: string) => `${n} positions were passed over as too near to another`,
    passedMore: (n: string) => `${n} and more positions were passed over as too near to another`,
    spacingHead: 'With that spacing a place of the ground is chosen:',
    spacing: (stratum: string, low: string, high: string, luck: string, redraws: string) =>
      `${stratum}: from ${low} to ${high} times the chance it would have without; what is within 1 ± ${luck} may be luck of the ${redraws} redraws`,
    failed: (n: string) => ` (${n} of them left without room)`,
    nearGiven: 'Near a fixed or hand-picked station the chance falls to 0: no new one is drawn there.',
  },
} as const;

export type PlanPhrases = SameShape<typeof english>;

export function planPhrases(language: Language): PlanPhrases {
  return language === 'fr' ? planPhrasesFr : english;
}
