/** All commands, in the order of an officer's evening. */

import type { Command } from 'commander';
import { answerCommand } from './commands/answer.ts';
import { backupCommand } from './commands/backup.ts';
import { biomassCommand } from './commands/biomass.ts';
import { changeCommand } from './commands/change.ts';
import { checkCommand } from './commands/check.ts';
import { demoCommand } from './commands/demo.ts';
import { densityCommand } from './commands/density.ts';
import { explainCommand } from './commands/explain.ts';
import { exportCommand } from './commands/export.ts';
import { harvestCommand } from './commands/harvest.ts';
import { historyCommand } from './commands/history.ts';
import { importCommand } from './commands/import.ts';
import { newCommand } from './commands/new.ts';
import { observersCommand } from './commands/observers.ts';
import { planCommand } from './commands/plan.ts';
import { reportCommand } from './commands/report.ts';
import { restoreCommand } from './commands/restore.ts';
import { richnessCommand } from './commands/richness.ts';
import { sensitivityCommand } from './commands/sensitivity.ts';
import { serveCommand } from './commands/serve.ts';
import { sizesCommand } from './commands/sizes.ts';
import { statusCommand } from './commands/status.ts';
import { strataCommand } from './commands/strata.ts';
import { trendCommand } from './commands/trend.ts';
import { valuesCommand } from './commands/values.ts';
import { verifyCommand } from './commands/verify.ts';
import { waypointsCommand } from './commands/waypoints.ts';
import type { Io } from './io.ts';

export interface CliCommand {
  readonly name: string;
  readonly define: (io: Io, setExitCode: (code: number) => void) => Command;
  /** Verbs of its own, as `size` in `plan size`; such a verb does nothing alone. */
  readonly verbs?: readonly CliCommand[];
}

export const commands: readonly CliCommand[] = [
  newCommand,
  demoCommand,
  importCommand,
  checkCommand,
  answerCommand,
  strataCommand,
  densityCommand,
  sizesCommand,
  changeCommand,
  trendCommand,
  biomassCommand,
  statusCommand,
  harvestCommand,
  observersCommand,
  richnessCommand,
  sensitivityCommand,
  explainCommand,
  valuesCommand,
  reportCommand,
  exportCommand,
  historyCommand,
  backupCommand,
  restoreCommand,
  verifyCommand,
  planCommand,
  waypointsCommand,
  serveCommand,
];
