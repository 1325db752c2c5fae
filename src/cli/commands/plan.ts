/** The verb `plan` holds verbs of its own, in the order of a plan: how many, where over the strata, what it will say. */

import { Command } from 'commander';
import type { CliCommand } from '../commands.ts';
import { planAllocateCommand } from './plan-allocate.ts';
import { planDrawCommand } from './plan-draw.ts';
import { planLayCommand } from './plan-lay.ts';
import { planPageCommand } from './plan-page.ts';
import { planRehearseCommand } from './plan-rehearse.ts';
import { planReplaceCommand } from './plan-replace.ts';
import { planShowCommand } from './plan-show.ts';
import { planSizeCommand } from './plan-size.ts';

/** One line for each: import it above, name it here. */
const verbs: readonly CliCommand[] = [
  planSizeCommand,
  planAllocateCommand,
  planRehearseCommand,
  planDrawCommand,
  planLayCommand,
  planReplaceCommand,
  planShowCommand,
  planPageCommand,
];

export const planCommand: CliCommand = {
  name: 'plan',
  verbs,
  define: (io, setExitCode) => {
    const plan = new Command('plan')
      .description('plan a survey: how many stations, which ones, where each belt lies, what it will say')
      .helpOption('-h, --help', 'print this help')
      .helpCommand('help [verb]', 'print the help of a verb of plan')
      .enablePositionalOptions()
      .addHelpText(
        'after',
        '\nExample: slateline plan size --book north-reefs --survey "North 2026" --species sandfish --change 0.5\n',
      );
    for (const verb of verbs) plan.addCommand(verb.define(io, setExitCode));
    return plan;
  },
};
