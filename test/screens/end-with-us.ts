import type { ChildProcess } from 'node:child_process';

const running = new Set<ChildProcess>();
process.once('exit', () => {
  for (const child of running) child.kill('SIGKILL');
});

/** A program we started does not outlive us, however we end. */
export function endWithUs(child: ChildProcess): void {
  running.add(child);
  child.once('exit', () => running.delete(child));
}
