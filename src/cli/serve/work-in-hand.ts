/** What has begun and not ended, so that a book is closed behind the last of it. */
export function workInHand() {
  const begun = new Set<Promise<unknown>>();
  return {
    until: <Value>(work: Promise<Value>): Promise<Value> => {
      begun.add(work);
      const done = () => begun.delete(work);
      work.then(done, done);
      return work;
    },
    ended: async () => {
      while (begun.size > 0) await Promise.allSettled(begun);
    },
  };
}
