/** What the mapping of somebody else's files can get wrong, and what it left out by its own rules. */

import type { ProblemCode } from '../../survey/problem-codes.ts';

export const problemsMapping = {
  'mapping-invalid':
    'the mapping cannot be followed[ at {path}][, where “{value}” stands][; it should be {expected}][: {why}][; did you mean {suggestion}?]',
  'mapping-file-missing':
    'the mapping names the file “{file}”[, sheet “{sheet}”], which is not among the files given[; did you mean {suggestion}?]',
  'left-out-by-rule':
    '{rows} {rows:row|rows}[ of {file}] {rows:was|were} left out by the rule “{rule}” of the mapping',
  'first-of-several':
    '{column} of “{key}” in {table} is “{value}” here and “{kept}” before; the first one was kept',
  'added-together':
    '{rows} {rows:row|rows} of {table} {rows:was|were} added to an earlier row about the same species on the same transect',
  'read-by-rule': '{cells} cells of {column} in {table} were read by the rule {rule} of the mapping',
  'asked-by-rule': '“{value}”: the mapping asks a person to look at this row ({rule})',
  'not-in-list': '“{value}” is not in the list {list} and was kept as written[; did you mean {suggestion}?]',
} as const satisfies Partial<Record<ProblemCode, string>>;
