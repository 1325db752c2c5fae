/** All commands, in the order of an officer's evening. */

import type { Command } from 'commander';
import { answerCommand } from './commands/answer.ts';
import { backupCommand } from './commands/backup.ts';
import { checkCommand } from './commands/check.ts';
import { demoCommand } from './commands/demo.ts';
import { densityCommand } from './commands/density.ts';
import { exportCommand } from './commands/export.ts';
import { historyCommand } from './commands/history.ts';
import { importCommand } from './commands/import.ts';
import { newCommand } from './commands/new.ts';
import { reportCommand } from './commands/report.ts';
import { restoreCommand } from './commands/restore.ts';
import { sizesCommand } from './commands/sizes.ts';
import { verifyCommand } from './commands/verify.ts';
import type { Io } from './io.ts';

export interface CliCommand {
  readonly name: string;
  readonly define: (io: Io, setExitCode: (code: number) => void) => Command;
}

export const commands: readonly CliCommand[] = [
  newCommand,
  demoCommand,
  importCommand,
  checkCommand,
  answerCommand,
  densityCommand,
  sizesCommand,
  reportCommand,
  exportCommand,
  historyCommand,
  backupCommand,
  restoreCommand,
  verifyCommand,
];
