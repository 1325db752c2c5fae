import { expect, it } from 'vitest';
import { fuzzBench } from './run-case.ts';

const seed = 20_261;
const cases = 600;

// The long run is `node test/fuzz/run.ts --cases 10000`.
it(`${cases} damaged inputs never throw and never write half`, async () => {
  const bench = await fuzzBench(seed);
  let written = 0;
  let stopped = 0;
  for (let at = 0; at < cases; at++) {
    try {
      const result = await bench.run(at);
      if (result.written) written++;
      if (result.stopped) stopped++;
    } catch (error) {
      throw new Error(`node test/fuzz/run.ts --seed ${seed} --only ${at}`, { cause: error });
    }
  }
  await bench.close();
  // A run that only ever stops, or never does, would show nothing.
  expect(written).toBeGreaterThan(20);
  expect(stopped).toBeGreaterThan(100);
});
