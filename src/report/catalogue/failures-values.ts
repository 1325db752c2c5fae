/** Own values that a person named and the book does not hold. */

import type { FailureCode } from '../../survey/failure.ts';

export const failuresValues = {
  'no-such-own-value':
    'the book has no own value “{name}” of {species}[; did you mean “{nearest}”?][; it has: {known}]; built-in values cannot be withdrawn, an own one stands before them',
  'several-own-values': 'there is more than one own value “{name}”: {known}; name the one with --source',
  'withdraw-needs': 'to withdraw “{name}” the book has to know of which species and why; give {missing}',
} as const satisfies Partial<Record<FailureCode, string>>;
