/**
 * The full fuzz run: `node test/fuzz/run.ts --cases 10000 --seed 1`. One case alone: `--only 4711 --seed 1`.
 * The cases run in a thread of their own; this one watches that none of them hangs.
 */

import { parseArgs } from 'node:util';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { fuzzBench } from './run-case.ts';

interface Plan {
  readonly seed: number;
  readonly from: number;
  readonly cases: number;
}

const longestMs = 20_000;

if (isMainThread) watch(planOf(process.argv.slice(2)));
else await work(workerData as Plan);

function planOf(args: readonly string[]): Plan {
  const { values } = parseArgs({
    args: [...args],
    options: { cases: { type: 'string' }, seed: { type: 'string' }, only: { type: 'string' } },
  });
  const only = values.only === undefined ? null : Number(values.only);
  return {
    seed: Number(values.seed ?? 1),
    from: only ?? 0,
    cases: only === null ? Number(values.cases ?? 10_000) : 1,
  };
}

function watch(plan: Plan): void {
  process.stdout.write(`fuzz: ${plan.cases} cases from ${plan.from}, seed ${plan.seed}\n`);
  const worker = new Worker(new URL(import.meta.url), { workerData: plan });
  let current = plan.from;
  let since = performance.now();
  const watchdog = setInterval(() => {
    if (performance.now() - since < longestMs) return;
    process.stdout.write(`HANGS: seed ${plan.seed}, case ${current}\n`);
    process.exit(1);
  }, 1000);
  worker.on('message', (message: { at?: number; say?: string }) => {
    if (message.at !== undefined) [current, since] = [message.at, performance.now()];
    if (message.say !== undefined) process.stdout.write(`${message.say}\n`);
  });
  worker.on('error', (error) => {
    process.stdout.write(`DIED: seed ${plan.seed}, case ${current}: ${error.stack}\n`);
    process.exitCode = 1;
  });
  worker.on('exit', (code) => {
    clearInterval(watchdog);
    if (code !== 0) process.exitCode = 1;
  });
}

async function work({ seed, from, cases }: Plan): Promise<void> {
  const say = (line: string) => parentPort!.postMessage({ say: line });
  const bench = await fuzzBench(seed);
  const count = { stopped: 0, imported: 0, written: 0, failed: 0 };
  let slowest = { ms: 0, at: from };
  for (let at = from; at < from + cases; at++) {
    parentPort!.postMessage({ at });
    try {
      const result = await bench.run(at);
      if (result.stopped) count.stopped++;
      if (result.imported) count.imported++;
      if (result.written) count.written++;
      if (result.ms > slowest.ms) slowest = { ms: result.ms, at };
    } catch (error) {
      count.failed++;
      say(`FAILED: seed ${seed}, case ${at}: ${(error as Error).stack}`);
    }
  }
  await bench.close();
  say(
    `${cases} cases: ${count.stopped} stopped, ${count.imported} imported (${count.written} written whole), ` +
      `${count.failed} failed; slowest ${slowest.ms.toFixed(0)} ms (case ${slowest.at})`,
  );
  if (count.failed > 0) process.exitCode = 1;
}
