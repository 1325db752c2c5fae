/** Clocks and memory for the bench. Nothing here knows what is measured. */

export interface Timed<Result> {
  readonly ms: number;
  readonly result: Result;
}

export async function timed<Result>(work: () => Promise<Result> | Result): Promise<Timed<Result>> {
  const start = performance.now();
  const result = await work();
  return { ms: performance.now() - start, result };
}

export interface Rounds {
  /** The first round, while the program is still being compiled. */
  readonly firstMs: number;
  readonly medianMs: number;
}

/** Runs several pieces of work in turn, so that a busy moment of the machine falls on all. Each tells its own milliseconds. */
export async function inTurns<Name extends string>(
  rounds: number,
  works: Readonly<Record<Name, () => Promise<number> | number>>,
): Promise<Readonly<Record<Name, Rounds>>> {
  const names = Object.keys(works) as Name[];
  const msOf = new Map<Name, number[]>(names.map((name) => [name, []]));
  for (let round = 0; round < rounds; round++) {
    for (const name of names) msOf.get(name)!.push(await works[name]());
  }
  const summaries = names.map((name): [Name, Rounds] => {
    const times = msOf.get(name)!;
    return [name, { firstMs: times[0]!, medianMs: median(times) }];
  });
  return Object.fromEntries(summaries) as Record<Name, Rounds>;
}

/** Work that takes no time before or after what is to be measured. */
export function clocked(work: () => Promise<unknown> | unknown): () => Promise<number> {
  return async () => (await timed(work)).ms;
}

export function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)]!;
}

/** The most memory this process has ever held, as the operating system counts it. */
export function peakMemoryMb(): number {
  return Math.round(process.resourceUsage().maxRSS / 1024);
}
