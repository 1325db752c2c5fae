import { Failure } from '../survey/failure.ts';

/** Tries again while another thread or program is writing to the book, without holding up anybody else. */
export async function whenFree<Value>(
  work: () => Promise<Value>,
  { pause }: { readonly pause: (ms: number) => Promise<void> },
): Promise<Value> {
  for (let tries = 1; ; tries++) {
    try {
      return await work();
    } catch (error) {
      const isTaken = error instanceof Failure && error.code === 'book-locked';
      if (!isTaken || tries === mostTries) throw error;
      await pause(betweenTriesMs);
    }
  }
}

const betweenTriesMs = 50;
const mostTries = 600;
