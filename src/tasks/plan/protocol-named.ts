import { type Planned, planned, planProblem, refused } from '../../planning/size/plan-problem.ts';
import { nearestName } from '../../survey/nearest-name.ts';
import { protocolPresets } from '../../survey/protocol-presets.ts';
import type { Store } from '../../survey/store.ts';
import type { Protocol } from '../../survey/words.ts';

/** A protocol of the book, else one of the ready ones; null when none is asked for. */
export async function protocolNamed(store: Store, name: string | null): Promise<Planned<Protocol | null>> {
  if (name === null) return planned(null);
  const own = await store.all('protocol');
  const all = [...own, ...protocolPresets.map((one) => ({ ...one, id: '' }))];
  const found = all.find((one) => one.name === name);
  if (found !== undefined) return planned(found);
  const known = [...new Set(all.map((one) => one.name))];
  const nearest = nearestName(name, known) ?? '';
  return refused([planProblem('plan-protocol-unknown', { name, nearest, known: known.join(', ') })]);
}
