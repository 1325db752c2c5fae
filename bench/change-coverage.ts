/**
 * How often do the intervals of a change hold the truth, cry wolf, and tell a halving? Anyone can run it again:
 *
 *   node bench/change-coverage.ts [--draws 300] [--seed 1]
 *
 * Two surveys are drawn from the populations of INTERVALS.md, the later with a known ratio of densities; the
 * clumped-count interval of the ratio and that of the log ratio (METHODS f) are computed at nominal 95 %. Writes
 * bench/change-coverage-results.md. Pairs in which one survey has no animal are counted apart.
 */

import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { clumpedRatio } from '../src/estimates/change/clumped-ratio.ts';
import { placeCorrelation } from '../src/estimates/change/place-correlation.ts';
import { changeOfMeans } from '../src/estimates/change/two-means.ts';
import { createClumpedIntervals } from '../src/estimates/clumped/clumped-intervals.ts';
import { normalQuantile } from '../src/maths/distributions.ts';
import { seededRandom } from '../src/maths/random.ts';

const areaM2 = 240;
const confidence = 0.95;
const sizes = [5, 8, 15, 30];
const intervals = createClumpedIntervals();

/** One place in two surveys; `ratio` is later over earlier, `alike` how much of a place stays as it was. */
type Place = (ratio: number, chance: Chance) => readonly [from: number, to: number];
type Chance = { readonly uniform: () => number };

const gauss = ({ uniform }: Chance) => normalQuantile(uniform() || 1e-12);

/** Marsaglia and Tsang (2000), from memory; mean `shape`. */
function gamma(shape: number, chance: Chance): number {
  if (shape < 1) return gamma(shape + 1, chance) * (chance.uniform() || 1e-300) ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = gauss(chance);
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(chance.uniform() || 1e-300) < 0.5 * x * x + d - d * v + d * Math.log(v))
      return d * v;
  }
}

/** By counting exponential waits; for large means by the normal law, where nobody could tell the two apart. */
function poisson(mean: number, chance: Chance): number {
  if (mean > 200) return Math.max(0, Math.round(mean + Math.sqrt(mean) * gauss(chance)));
  let animals = -1;
  for (let waited = 0; waited < mean; animals++) waited -= Math.log(chance.uniform() || 1e-300);
  return Math.max(0, animals);
}

function anew(rate: (chance: Chance) => number, mean: number): Place {
  return (ratio, chance) => [
    poisson(mean * rate(chance), chance),
    poisson(ratio * mean * rate(chance), chance),
  ];
}

const nb = (k: number) => (chance: Chance) => gamma(k, chance) / k;
const logNormal = (sigma: number) => (chance: Chance) => Math.exp(sigma * gauss(chance) - sigma ** 2 / 2);

const drawnAnew: Readonly<Record<string, Place>> = {
  'negative binomial k 0.25, mean 6': anew(nb(0.25), 6),
  'negative binomial k 1, mean 6': anew(nb(1), 6),
  'negative binomial k 0.15, mean 30': anew(nb(0.15), 30),
  'log-normal-Poisson sigma 1.2, mean 6': anew(logNormal(1.2), 6),
  'log-normal-Poisson sigma 1.8, mean 6': anew(logNormal(1.8), 6),
  'Poisson 6 with 60 % empty stations': anew((chance) => (chance.uniform() < 0.6 ? 0 : 2.5), 6),
  'Poisson 5 (not clumped)': anew(() => 1, 5),
};

/** Four places in five keep what they had, the fifth is drawn again. */
function kept(rate: (chance: Chance) => number, mean: number): Place {
  return (ratio, chance) => {
    const before = rate(chance);
    const after = chance.uniform() < 0.8 ? before : rate(chance);
    return [poisson(mean * before, chance), poisson(ratio * mean * after, chance)];
  };
}

function drifting(sigma: number, correlation: number, mean: number): Place {
  return (ratio, chance) => {
    const z = gauss(chance);
    const w = correlation * z + Math.sqrt(1 - correlation ** 2) * gauss(chance);
    const rate = (score: number) => mean * Math.exp(sigma * score - sigma ** 2 / 2);
    return [poisson(rate(z), chance), poisson(ratio * rate(w), chance)];
  };
}

const workedTwice: Readonly<Record<string, Place>> = {
  'negative binomial k 0.25, 4 of 5 places as before': kept(nb(0.25), 6),
  'negative binomial k 0.25, no place as before': drawnAnew['negative binomial k 0.25, mean 6']!,
  'negative binomial k 1, 4 of 5 places as before': kept(nb(1), 6),
  'log-normal-Poisson sigma 1.2, correlation 0.8': drifting(1.2, 0.8, 6),
  'log-normal-Poisson sigma 1.8, correlation 0.9': drifting(1.8, 0.9, 6),
};

interface Score {
  held: number;
  told: number;
  used: number;
  widths: number[];
}

function main(): void {
  const { values } = parseArgs({ options: { draws: { type: 'string' }, seed: { type: 'string' } } });
  const draws = Number(values.draws ?? 300);
  const seed = Number(values.seed ?? 1);
  const error = Math.sqrt((0.95 * 0.05) / draws).toFixed(3);
  const text = [
    '# Coverage of the intervals of a change',
    '',
    `Written by \`node bench/change-coverage.ts --draws ${draws} --seed ${seed}\`. Nominal 95 %; Monte Carlo standard error of a coverage of 0.95: ${error}.`,
    'Coverage, then in brackets the median ratio of the upper to the lower end. "cries wolf": a change told where there is none.',
    '',
    '## Stations drawn anew',
    '',
    ...tableOf(drawnAnew, false, draws, seed),
    '',
    '## Places worked twice, matched',
    '',
    ...tableOf(workedTwice, true, draws, seed + 500),
    '',
  ].join('\n');
  process.stdout.write(text);
  writeFileSync(new URL('change-coverage-results.md', import.meta.url), text);
}

function tableOf(
  places: Readonly<Record<string, Place>>,
  matched: boolean,
  draws: number,
  seed: number,
): string[] {
  const rows = Object.entries(places).flatMap(([name, place], p) =>
    sizes.map((stations, n) => {
      const cells = [1, 0.5, 0.25].map((ratio, r) =>
        scoreOf({ place, stations, ratio, matched, draws, seed: 1000 * seed + 100 * p + 10 * n + r }),
      );
      const shares = cells.map(
        ([joint, design]) => `${share(joint.held, joint)} (${middle(joint)}) | ${share(design.held, design)}`,
      );
      const wolf = cells[0]!.map((one) => share(one.told, one)).join(' / ');
      const halving = cells[1]!.map((one) => share(one.told, one)).join(' / ');
      return `| ${name} | ${stations} | ${shares.join(' | ')} | ${wolf} | ${halving} |`;
    }),
  );
  return [
    '| population | stations each | clumped, ratio 1 | log ratio | clumped, 0.5 | log ratio | clumped, 0.25 | log ratio | cries wolf: clumped / log ratio | tells a halving: clumped / log ratio |',
    '|---|---|---|---|---|---|---|---|---|---|',
    ...rows,
  ];
}

function share(part: number, { used }: Score): string {
  return (part / used).toFixed(3);
}

function middle({ widths }: Score): string {
  const sorted = widths.toSorted((a, b) => a - b);
  const value = sorted[sorted.length >> 1]!;
  return value < 10 ? value.toFixed(1) : value.toFixed(0);
}

interface Case {
  readonly place: Place;
  readonly stations: number;
  readonly ratio: number;
  readonly matched: boolean;
  readonly draws: number;
  readonly seed: number;
}

function scoreOf({
  place,
  stations,
  ratio,
  matched,
  draws,
  seed,
}: Case): readonly [joint: Score, design: Score] {
  const chance = seededRandom(seed);
  const scores = [blank(), blank()] as const;
  for (let draw = 0; draw < draws; draw++) {
    const pairs = Array.from({ length: stations }, () => place(ratio, chance));
    const from = pairs.map(([before]) => before);
    const to = pairs.map(([, after]) => after);
    if (!from.some((one) => one > 0) || !to.some((one) => one > 0)) continue;
    const correlation = matched ? placeCorrelation(pairs, { from: stations, to: stations }) : 0;
    const counts = (values: readonly number[]) => values.map((animals) => ({ animals, areaM2 }));
    const belief = clumpedRatio([{ weight: 1, from: counts(from), to: counts(to), correlation }], intervals, {
      random: seededRandom(draw),
      draws: 4000,
    });
    mark(scores[0], belief.interval(confidence), ratio);
    const placed = (values: readonly number[]) =>
      values.map((animals, i) => ({
        place: matched ? `${i}` : null,
        valuePerHa: (animals * 10_000) / areaM2,
      }));
    const { logRatio } = changeOfMeans(
      [{ name: 'A', weight: 1, from: placed(from), to: placed(to) }],
      confidence,
    );
    if (logRatio?.interval)
      mark(scores[1], [Math.exp(logRatio.interval[0]), Math.exp(logRatio.interval[1])], ratio);
  }
  return scores;
}

function blank(): Score {
  return { held: 0, told: 0, used: 0, widths: [] };
}

function mark(score: Score, [low, high]: readonly [number, number], truth: number): void {
  score.used += 1;
  if (low <= truth && truth <= high) score.held += 1;
  if (high < 1 || (truth === 1 && low > 1)) score.told += 1;
  score.widths.push(high / low);
}

main();
