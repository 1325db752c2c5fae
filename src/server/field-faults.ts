/** What the schemas found wrong with a request, in codes of our own: the sentences of the library never reach a person. */

import type { FieldFault, RightCode } from '../report/catalogue/field-words.ts';

/** An issue of the library (zod 4): which members it has depends on its code. */
export interface SchemaIssue {
  readonly code?: string | undefined;
  readonly path: readonly PropertyKey[];
  readonly [more: string]: unknown;
}

const most = 50;

export function fieldFaults(issues: readonly SchemaIssue[], sent: unknown): readonly FieldFault[] {
  return issues.slice(0, most).map((issue) => faultOf(issue, sent));
}

function faultOf(issue: SchemaIssue, sent: unknown): FieldFault {
  const path = issue.path.map((part) => (typeof part === 'symbol' ? String(part) : part));
  const given = valueAt(sent, path);
  const fault = { path, given, right: null, parameters: {} };
  if (issue.code === 'custom') return { ...fault, ...ownRule(issue['params']) };
  if (issue.code === 'unrecognized_keys') {
    return { ...fault, said: 'unknown', parameters: { keys: (issue['keys'] as string[]).join(', ') } };
  }
  if (issue.code === 'invalid_union') return ofUnion(issue, sent, path);
  const isMissing = given === undefined || given === null || String(given).trim() === '';
  return { ...fault, said: isMissing ? 'missing' : 'wrong', ...rightOf(issue, isMissing) };
}

type Right = Pick<FieldFault, 'right' | 'parameters'>;

function rightOf(issue: SchemaIssue, isMissing: boolean): Right {
  const right = (code: RightCode, parameters: Record<string, unknown> = {}): Right => ({
    right: code,
    parameters: Object.fromEntries(Object.entries(parameters).map(([name, value]) => [name, String(value)])),
  });
  switch (issue.code) {
    case 'invalid_type':
      return right(types[String(issue['expected'])] ?? 'other');
    case 'invalid_value':
      return right('choice', { choices: (issue['values'] as unknown[]).map(String).join(', ') });
    case 'invalid_format':
      return formOf(issue, right);
    case 'not_multiple_of':
      return right('step', { limit: issue['divisor'] });
    case 'too_small':
      if (isMissing && issue['origin'] === 'string') return right('text');
      return right(leastOf(issue), { limit: issue['minimum'] });
    case 'too_big':
      return right(mostOf(issue), { limit: issue['maximum'] });
    default:
      return right('other');
  }
}

const types: Readonly<Record<string, RightCode>> = {
  string: 'text',
  number: 'number',
  int: 'int',
  boolean: 'boolean',
  array: 'list',
  object: 'object',
  record: 'object',
  null: 'nothing',
};

function leastOf({ origin, inclusive }: SchemaIssue): RightCode {
  if (origin === 'string') return 'characters-least';
  if (origin === 'array' || origin === 'set') return 'entries-least';
  return inclusive === false ? 'above' : 'at-least';
}

function mostOf({ origin, inclusive }: SchemaIssue): RightCode {
  if (origin === 'string') return 'characters-most';
  if (origin === 'array' || origin === 'set') return 'entries-most';
  return inclusive === false ? 'below' : 'at-most';
}

const examples: Readonly<Record<string, string>> = {
  uuid: '0199c2de-4b1a-7c3d-9e5f-0123456789ab',
  date: '2026-09-30',
  datetime: '2026-09-30T08:00:00Z',
};
/** For patterns of our own: the one that fits the pattern is the one to show. */
const patternExamples = ['08:10', '2026-09-30T08:10', '+12:00', '0123456789abcdef'.repeat(4)];

function formOf(
  issue: SchemaIssue,
  right: (code: RightCode, parameters: object & Record<string, unknown>) => Right,
) {
  const pattern = /^\/(.*)\/(\w*)$/s.exec(String(issue['pattern'] ?? ''));
  const fits = (text: string) => pattern !== null && new RegExp(pattern[1]!, pattern[2]).test(text);
  const example = examples[String(issue['format'])] ?? patternExamples.find(fits);
  return example === undefined ? right('other', {}) : right('form', { example });
}

/** Of several things that could stand there, the first that is more than nothing. */
function ofUnion(issue: SchemaIssue, sent: unknown, path: FieldFault['path']): FieldFault {
  const branches = (issue['errors'] ?? []) as readonly (readonly SchemaIssue[])[];
  const first = branches.flatMap((branch) => branch.slice(0, 1)).find((one) => one['expected'] !== 'null');
  if (first === undefined) {
    return { path, given: valueAt(sent, path), said: 'wrong', right: 'other', parameters: {} };
  }
  return faultOf({ ...first, path: [...path, ...first.path] }, sent);
}

/** Rules that the schemas of sheets add say in `params` which they are. */
function ownRule(params: unknown): Pick<FieldFault, 'said' | 'right'> {
  const { said, right } = (params ?? {}) as Partial<Pick<FieldFault, 'said' | 'right'>>;
  return { said: said ?? 'wrong', right: right ?? (said === undefined ? 'other' : null) };
}

function valueAt(sent: unknown, path: FieldFault['path']): unknown {
  let value = sent;
  for (const part of path) {
    if (value === null || typeof value !== 'object') return undefined;
    value = (value as Record<string, unknown>)[part];
  }
  return value;
}
