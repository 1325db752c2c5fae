/** Prints one plain closing line that any program can read: "N passed, N failed, N skipped". */

import type { Reporter, TestModule } from 'vitest/node';

export default class ClosingLineReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const counts = { passed: 0, failed: 0, skipped: 0, pending: 0 };
    for (const module of modules)
      for (const test of module.children.allTests()) counts[test.result().state]++;
    // A file that cannot be loaded holds no test, and is a failure all the same.
    const broken = modules.filter((module) => module.errors().length > 0).length;
    const { passed, failed, skipped, pending } = counts;
    process.stdout.write(`\n${passed} passed, ${failed + broken + pending} failed, ${skipped} skipped\n`);
  }
}
