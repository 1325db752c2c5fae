import type { SeededRandom } from '../../maths/random.ts';
import { sum } from '../../maths/variance.ts';
import type { PlaceValue, StratumOfTwo } from './two-means.ts';

export interface PermutationResult {
  /** Later minus earlier, by the weights of the strata, animals per hectare. */
  readonly statistic: number;
  readonly arrangements: number;
  readonly isExact: boolean;
  readonly asFarOrFarther: number;
  readonly pTwoSided: number;
  /** Arrangements at least as low (for a fall) or as high (for a rise) as what was found. */
  readonly pOneSided: number;
}

const mostExact = 20_000;
const nearness = 1e-9;

/**
 * Could the change be chance alone? Whole stations change surveys within their stratum, a place worked in both swaps its
 * two values; the share of arrangements as far from zero as the one found is the p value.
 *
 * All arrangements when there are at most 20 000, else `draws` at random from the seed, with (c + 1) / (B + 1).
 * Assumes that without a change the stations of both surveys could have been exchanged: same method, same season.
 * Source: Manly 2007; METHODS f, vectors f2 and f2b.
 */
export function permutationTest(
  strata: readonly StratumOfTwo[],
  options: { readonly random: SeededRandom; readonly draws: number },
): PermutationResult {
  const total = sum(strata.map((stratum) => stratum.weight));
  const blocks = strata.flatMap((stratum) => blocksOf(stratum, stratum.weight / total));
  const statistic = sum(blocks.map((block) => block.found));
  const arrangements = blocks.reduce((product, block) => product * block.arrangements, 1);
  const tally = new Tally(statistic);
  if (arrangements <= mostExact) {
    for (const value of everySum(blocks.map((block) => block.every()))) tally.add(value);
    return { statistic, isExact: true, ...tally.result(0) };
  }
  for (let i = 0; i < options.draws; i++) {
    let value = 0;
    for (const block of blocks) value += block.draw(options.random);
    tally.add(value);
  }
  return { statistic, isExact: false, ...tally.result(1) };
}

/** Counts what is as far as the statistic; equal up to rounding is as far. */
class Tally {
  readonly #statistic: number;
  readonly #slack: number;
  #all = 0;
  #far = 0;
  #oneSided = 0;

  constructor(statistic: number) {
    this.#statistic = statistic;
    this.#slack = nearness * Math.max(1, Math.abs(statistic));
  }

  add(value: number): void {
    this.#all += 1;
    if (Math.abs(value) >= Math.abs(this.#statistic) - this.#slack) this.#far += 1;
    const beyond = this.#statistic < 0 ? this.#statistic - value : value - this.#statistic;
    if (beyond >= -this.#slack) this.#oneSided += 1;
  }

  /** `own`: 1 where the arrangement found is not among the draws and counts as one of them. */
  result(own: 0 | 1): Omit<PermutationResult, 'statistic' | 'isExact'> {
    return {
      arrangements: this.#all,
      asFarOrFarther: this.#far,
      pTwoSided: (this.#far + own) / (this.#all + own),
      pOneSided: (this.#oneSided + own) / (this.#all + own),
    };
  }
}

/** Values that can be exchanged among each other, and what each arrangement adds to the statistic. */
interface Block {
  readonly found: number;
  readonly arrangements: number;
  every(): readonly number[];
  draw(random: SeededRandom): number;
}

function blocksOf(stratum: StratumOfTwo, share: number): Block[] {
  const perFrom = share / stratum.from.length;
  const perTo = share / stratum.to.length;
  const later = new Map(
    stratum.to.flatMap((one) => (one.place === null ? [] : [[one.place, one.valuePerHa] as const])),
  );
  const isMatched = (one: PlaceValue, others: readonly PlaceValue[]) =>
    one.place !== null && others.some((other) => other.place === one.place);
  const pairs = stratum.from.filter((one) => isMatched(one, stratum.to));
  const from = stratum.from.filter((one) => !isMatched(one, stratum.to)).map((one) => one.valuePerHa);
  const to = stratum.to.filter((one) => !isMatched(one, stratum.from)).map((one) => one.valuePerHa);
  const blocks = pairs.map((one) => pairBlock(one.valuePerHa, later.get(one.place!)!, perFrom, perTo));
  return from.length + to.length === 0 ? blocks : [...blocks, freeBlock(from, to, perFrom, perTo)];
}

function pairBlock(from: number, to: number, perFrom: number, perTo: number): Block {
  const found = perTo * to - perFrom * from;
  const swapped = perTo * from - perFrom * to;
  return {
    found,
    arrangements: 2,
    every: () => [found, swapped],
    draw: (random) => (random.below(2) === 0 ? found : swapped),
  };
}

function freeBlock(from: readonly number[], to: readonly number[], perFrom: number, perTo: number): Block {
  const pool = Float64Array.from([...from, ...to]);
  const all = sum(pool);
  // What is not of the earlier survey is of the later one: one sum tells both.
  const contributionOf = (earlier: number) => perTo * (all - earlier) - perFrom * earlier;
  return {
    found: contributionOf(sum(from)),
    arrangements: binomial(pool.length, from.length),
    every: () => everySubsetSum(pool, from.length).map(contributionOf),
    draw: (random) => contributionOf(drawnSum(pool, from.length, random)),
  };
}

/** The sum of so many values drawn without putting back; the pool is left in another order. */
function drawnSum(pool: Float64Array, size: number, random: SeededRandom): number {
  let total = 0;
  for (let i = 0; i < size; i++) {
    const j = i + random.below(pool.length - i);
    const taken = pool[j]!;
    pool[j] = pool[i]!;
    pool[i] = taken;
    total += taken;
  }
  return total;
}

function everySubsetSum(values: Float64Array, size: number): number[] {
  const sums: number[] = [];
  const walk = (start: number, left: number, total: number) => {
    if (left === 0) sums.push(total);
    else for (let i = start; i <= values.length - left; i++) walk(i + 1, left - 1, total + values[i]!);
  };
  walk(0, size, 0);
  return sums;
}

function everySum(lists: readonly (readonly number[])[]): number[] {
  return lists.reduce<number[]>((sums, list) => sums.flatMap((one) => list.map((value) => one + value)), [0]);
}

function binomial(n: number, k: number): number {
  let value = 1;
  for (let i = 1; i <= Math.min(k, n - k); i++) value = (value * (n - Math.min(k, n - k) + i)) / i;
  return Math.round(value);
}
