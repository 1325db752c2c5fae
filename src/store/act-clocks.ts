/**
 * Which acts have a clock that can be believed, and when the others count as made.
 *
 * Laptops forget the date when their battery dies, and people set it wrong. The order of the acts is
 * certain; the clocks are not. The largest set of acts whose clocks agree with their order is believed.
 * An act outside it counts as made at the same moment as the believed one before it.
 */

export interface ActClock {
  readonly number: number;
  /** ISO instant in UTC, as the clock said. */
  readonly at: string;
}

export interface PlacedAct extends ActClock {
  /** When the act counts as made, in milliseconds since 1970; never earlier than the act before it. */
  readonly countsAtMs: number;
  readonly clockBelieved: boolean;
}

/** The acts in their order. About n log n steps for n acts. */
export function placeActs(acts: readonly ActClock[]): readonly PlacedAct[] {
  const times = acts.map((act) => Date.parse(act.at));
  const believed = longestInOrder(times);
  // Acts before the first believed one happened before it, whatever they say.
  let countsAtMs = times.find((_, i) => believed.has(i)) ?? 0;
  return acts.map((act, i) => {
    const clockBelieved = believed.has(i);
    if (clockBelieved) countsAtMs = times[i]!;
    return { ...act, countsAtMs, clockBelieved };
  });
}

/**
 * Places of a longest run of times that never fall (longest non-decreasing subsequence by patience sorting,
 * Fredman 1975, from memory). Read from the end, so that of two acts that contradict each other the one with
 * the later date is believed: a dead battery sends a clock to the past far more often than to the future.
 * An act in the future is outvoted once two acts with right clocks have followed it.
 */
function longestInOrder(times: readonly number[]): ReadonlySet<number> {
  /** `heads[k]`: where the run of k + 1 acts begins that leaves most room before it. */
  const heads: number[] = [];
  const next: (number | undefined)[] = [];
  for (let i = times.length - 1; i >= 0; i--) {
    let low = 0;
    let high = heads.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (times[heads[middle]!]! >= times[i]!) low = middle + 1;
      else high = middle;
    }
    next[i] = low === 0 ? undefined : heads[low - 1];
    heads[low] = i;
  }
  const places = new Set<number>();
  for (let i = heads.at(-1); i !== undefined; i = next[i]) places.add(i);
  return places;
}
