/** Options of `plan`: numbers go on as typed and are questioned in the task, with every number of the refusal. */

import { InvalidArgumentError } from 'commander';

export function plainNumber(text: string): number {
  const value = Number(text);
  if (text.trim() !== '' && !Number.isNaN(value)) return value;
  throw new InvalidArgumentError('write a number, with a point: 0.2');
}

/** An option that may be repeated, each time read alike. */
export function listOption<Value>(
  read: (text: string) => Value,
): (text: string, before: readonly Value[]) => readonly Value[] {
  return (text, before) => [...before, read(text)];
}

export function asWritten(text: string): string {
  return text.trim();
}
