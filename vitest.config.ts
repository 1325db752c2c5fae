import { defineConfig } from 'vitest/config';
import LongOnesFirst from './test/long-ones-first.ts';

/** No test measures time: this only ends what would never end, on a machine that may be busy with other things. */
const patienceMs = 300_000;

/** Nothing there keeps anything between two calls, so that its tests may share a process; everything else gets its own. */
const pure = ['maths', 'survey', 'estimates', 'planning', 'exchange', 'report', 'tasks'].map(
  (room) => `src/${room}/**/*.test.ts`,
);

export default defineConfig({
  test: {
    globalSetup: './test/run-folder.ts',
    // Two, also where there are two cores: the long ones often wait for a browser or a disk.
    maxWorkers: 2,
    sequence: { sequencer: LongOnesFirst },
    testTimeout: patienceMs,
    hookTimeout: patienceMs,
    teardownTimeout: 60_000,
    expect: { poll: { timeout: 90_000 } },
    reporters: ['default', './test/closing-line-reporter.ts'],
    projects: [
      { extends: true, test: { name: 'pure', include: pure, isolate: false } },
      {
        extends: true,
        test: { name: 'rest', include: ['src/**/*.test.ts', 'test/**/*.test.ts'], exclude: pure },
      },
    ],
  },
});
