import type { Store } from '../survey/store.ts';
import type { PlanTools } from '../tasks/plan/plan-named.ts';
import type { Io } from './io.ts';
import { today } from './today.ts';

/** What a task that changes a plan is given: the book, who acts, and the day. */
export function planTools(io: Io, store: Store, by: string | undefined): PlanTools {
  const signature = { who: by ?? io.user, at: io.now().toISOString(), device: io.device };
  return { store, signature, newId: io.newId, today: today(io) };
}
