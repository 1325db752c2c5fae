/** What the mapping of somebody else's files can get wrong, and what it left out by its own rules. */

import type { ProblemCode } from '../../survey/problem-codes.ts';

export const problemsMapping = {
  'mapping-invalid':
    'the mapping cannot be followed[ at {path}][, where “{value}” stands][; it should be {expected}][; did you mean {suggestion}?]',
  'mapping-file-missing':
    'the mapping names the file “{file}”[, sheet “{sheet}”], which is not among the files given[; did you mean {suggestion}?]',
  'left-out-by-rule': '{rows} rows[ of {file}] were left out by the rule “{rule}” of the mapping',
  'first-of-several':
    '{column} of “{key}” in {table} is “{value}” here and “{kept}” before; the first one was kept',
} as const satisfies Partial<Record<ProblemCode, string>>;
