/** From what a task made ready to what the queue writes and the screen is told. */

import type { ReadyToWrite } from '../tasks/sheets/new-survey.ts';
import type { Saved } from '../tasks/sheets/sheet-schemas.ts';
import type { ServerDependencies } from './dependencies.ts';
import type { ReadySave } from './save-queue.ts';

export async function written(
  ready: ReadyToWrite,
  { store }: Pick<ServerDependencies, 'store'>,
): Promise<ReadySave<Saved>> {
  const { revision } = ready;
  if (ready.state === 'stands') {
    const dataVersion = await store.dataVersion();
    return { act: null, answer: { revision, dataVersion, repeated: ready.repeated, changed: 0 } };
  }
  const changed = ready.act.changes.length;
  return {
    act: ready.act,
    answer: (dataVersion) => ({ revision, dataVersion, repeated: false, changed }),
  };
}
