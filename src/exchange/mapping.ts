/** Reads a mapping file, and says where in it something cannot be followed and what would be right. */

import type * as z from 'zod';
import type { Problem, WithProblems } from '../survey/message.ts';
import { problemSeverities } from '../survey/problem-codes.ts';
import { type Mapping, mappingFileSchema } from './mapping-schema.ts';

export type { Mapping };

/** The mapping in a text; null, with problems that name the path within the file, when it cannot be used. */
export function readMapping(text: string, file: string): WithProblems<Mapping | null> {
  let content: unknown;
  try {
    content = JSON.parse(text);
  } catch (error) {
    return {
      value: null,
      problems: [
        mappingProblem(file, { ...noFault, expected: 'a JSON text', why: (error as Error).message }),
      ],
    };
  }
  const result = mappingFileSchema.safeParse(content);
  if (result.success) return { value: result.data, problems: [] };
  const faults = result.error.issues.flatMap((issue) => faultsOf(issue, [], content));
  return { value: null, problems: faults.map((fault) => mappingProblem(file, fault)) };
}

interface Fault {
  readonly path: string;
  readonly value: string | number | null;
  readonly expected: string;
  /** What the reader of JSON says; empty when the text is JSON. */
  readonly why?: string;
  readonly suggestion: string | null;
}

const noFault: Fault = { path: '', value: null, expected: '', suggestion: null };

type Path = readonly PropertyKey[];

function faultsOf(issue: z.core.$ZodIssue, above: Path, content: unknown): Fault[] {
  const path = [...above, ...issue.path];
  const fault = { ...noFault, path: path.map(String).join('.'), value: wordAt(content, path) };
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        ...fault,
        path: [...path, key].map(String).join('.'),
        expected: 'a word of the handbook',
      }));
    case 'invalid_union': {
      const meant = nearestForm(issue.errors, content, path);
      if (meant !== null) return meant.flatMap((inner) => faultsOf(inner, path, content));
      return [{ ...fault, expected: 'one of the forms in the handbook' }];
    }
    case 'invalid_value':
      return [{ ...fault, expected: issue.values.map(String).join(', ') }];
    case 'invalid_type':
      return [{ ...fault, expected: issue.expected }];
    case 'too_small':
      return [{ ...fault, expected: 'filled' }];
    case 'custom':
      return [{ ...fault, expected: issue.message, suggestion: suggestionIn(issue.params) }];
    default:
      return [{ ...fault, expected: issue.message }];
  }
}

/** Of several allowed forms the one that was probably meant: the first whose own words are all there; null when none is. */
function nearestForm(
  forms: readonly (readonly z.core.$ZodIssue[])[],
  content: unknown,
  path: Path,
): readonly z.core.$ZodIssue[] | null {
  const isAbsent = (fault: z.core.$ZodIssue) => partAt(content, [...path, ...fault.path]) === undefined;
  const isOfAnotherKind = (fault: z.core.$ZodIssue) =>
    fault.code === 'invalid_type' && fault.path.length === 0;
  return forms.find((faults) => !faults.some((fault) => isAbsent(fault) || isOfAnotherKind(fault))) ?? null;
}

function wordAt(content: unknown, path: Path): string | number | null {
  const part = partAt(content, path);
  return typeof part === 'string' || typeof part === 'number' ? part : null;
}

function partAt(content: unknown, path: Path): unknown {
  let part = content;
  for (const step of path) {
    if (typeof part !== 'object' || part === null) return undefined;
    part = (part as Record<PropertyKey, unknown>)[step];
  }
  return part;
}

function suggestionIn(params: Readonly<Record<string, unknown>> | undefined): string | null {
  const { suggestion } = params ?? {};
  return typeof suggestion === 'string' ? suggestion : null;
}

function mappingProblem(file: string, fault: Fault): Problem {
  return {
    code: 'mapping-invalid',
    severity: problemSeverities['mapping-invalid'],
    place: { file },
    value: fault.value,
    parameters: {
      path: fault.path,
      expected: fault.expected,
      ...(fault.why === undefined ? {} : { why: fault.why }),
    },
    suggestion: fault.suggestion,
  };
}
