/**
 * All verbs, in the order of an officer's evening. Each is loaded when it is called: to load what all of them need
 * takes longer than most of them take.
 */

import type { Command } from 'commander';
import type { Io } from './io.ts';

export interface CliCommand {
  readonly name: string;
  readonly define: (io: Io, setExitCode: (code: number) => void) => Command;
  /** Verbs of its own, as `size` in `plan size`; such a verb does nothing alone. */
  readonly verbs?: readonly CliCommand[];
}

/** One line for each: its name, and where it is. */
const verbs: Readonly<Record<string, () => Promise<CliCommand>>> = {
  new: async () => (await import('./commands/new.ts')).newCommand,
  demo: async () => (await import('./commands/demo.ts')).demoCommand,
  import: async () => (await import('./commands/import.ts')).importCommand,
  check: async () => (await import('./commands/check.ts')).checkCommand,
  answer: async () => (await import('./commands/answer.ts')).answerCommand,
  strata: async () => (await import('./commands/strata.ts')).strataCommand,
  density: async () => (await import('./commands/density.ts')).densityCommand,
  sizes: async () => (await import('./commands/sizes.ts')).sizesCommand,
  change: async () => (await import('./commands/change.ts')).changeCommand,
  trend: async () => (await import('./commands/trend.ts')).trendCommand,
  biomass: async () => (await import('./commands/biomass.ts')).biomassCommand,
  status: async () => (await import('./commands/status.ts')).statusCommand,
  harvest: async () => (await import('./commands/harvest.ts')).harvestCommand,
  observers: async () => (await import('./commands/observers.ts')).observersCommand,
  richness: async () => (await import('./commands/richness.ts')).richnessCommand,
  sensitivity: async () => (await import('./commands/sensitivity.ts')).sensitivityCommand,
  explain: async () => (await import('./commands/explain.ts')).explainCommand,
  values: async () => (await import('./commands/values.ts')).valuesCommand,
  report: async () => (await import('./commands/report.ts')).reportCommand,
  export: async () => (await import('./commands/export.ts')).exportCommand,
  history: async () => (await import('./commands/history.ts')).historyCommand,
  backup: async () => (await import('./commands/backup.ts')).backupCommand,
  restore: async () => (await import('./commands/restore.ts')).restoreCommand,
  verify: async () => (await import('./commands/verify.ts')).verifyCommand,
  plan: async () => (await import('./commands/plan.ts')).planCommand,
  waypoints: async () => (await import('./commands/waypoints.ts')).waypointsCommand,
  serve: async () => (await import('./commands/serve.ts')).serveCommand,
};

export function allCommands(): Promise<readonly CliCommand[]> {
  return Promise.all(Object.values(verbs).map((load) => load()));
}

/** The verb that the first word calls; all of them where it calls none, for a help or a refusal that lists them. */
export async function commandsFor([word = '']: readonly string[]): Promise<readonly CliCommand[]> {
  if (word === '--version') return [];
  return Object.hasOwn(verbs, word) ? [await verbs[word]!()] : allCommands();
}
