/** Problems for people: stops first, then questions; many alike are counted, not repeated. */

import { sentence } from '../report/catalogue/sentence.ts';
import { counted } from '../survey/counted.ts';
import type { Problem, Severity } from '../survey/message.ts';

const order: readonly Severity[] = ['stop', 'explain', 'note'];
const words: Readonly<Record<Severity, string>> = { stop: 'stop', explain: 'question', note: 'note' };
const shownPerCode = 8;

/** One line each; of one code at most eight, then how many more there are. */
export function problemLines(problems: readonly Problem[]): readonly string[] {
  return order.flatMap((severity) => {
    const groups = new Map<string, Problem[]>();
    for (const problem of problems) {
      if (problem.severity !== severity) continue;
      groups.set(problem.code, [...(groups.get(problem.code) ?? []), problem]);
    }
    return [...groups.values()].flatMap((alike) => [
      ...alike.slice(0, shownPerCode).map((problem) => `${words[severity]}: ${sentence('en', problem)}`),
      ...(alike.length > shownPerCode
        ? [`${words[severity]}: ${alike.length - shownPerCode} more like the last one`]
        : []),
    ]);
  });
}

/** How many of each, for one closing line. */
export function problemCounts(problems: readonly Problem[]): string {
  const count = (severity: Severity) =>
    counted(problems.filter((problem) => problem.severity === severity).length, words[severity]);
  return order.map(count).join(', ');
}
