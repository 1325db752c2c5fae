/** Answers that were worked out are kept for as long as the book stands as it stood: a room opens at once the second time. */

import type { WorkOrder } from '../tasks/sheets/work-orders.ts';
import type { ServerDependencies } from './dependencies.ts';

export type ReadAnswers = (order: WorkOrder) => Promise<string>;

const mostKept = 40;

export function readAnswers({ store, work }: Pick<ServerDependencies, 'store' | 'work'>): ReadAnswers {
  const kept = new Map<string, Promise<string>>();
  return async (order) => {
    const key = `${await store.dataVersion()} ${JSON.stringify(order)}`;
    const before = kept.get(key);
    if (before !== undefined) return before;
    const answer = work.read(order);
    kept.set(key, answer);
    // A failure is not an answer to be kept.
    answer.catch(() => kept.delete(key));
    for (const oldest of kept.keys()) {
      if (kept.size <= mostKept) break;
      kept.delete(oldest);
    }
    return answer;
  };
}
