/** The two handbook pages that are made from the program itself: `node scripts/docs.ts` writes them, a test compares. */

import { writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { allCommands, type CliCommand } from '../src/cli/commands.ts';
import { run } from '../src/cli/run.ts';
import { templateOfMany } from '../src/report/catalogue/fill.ts';
import { problemTemplate } from '../src/report/catalogue/sentence.ts';
import { type ProblemCode, problemSeverities } from '../src/survey/problem-codes.ts';

const handbook = resolve(import.meta.dirname, '../docs/handbook');

/** Every made page by its file name. */
export async function madePages(): Promise<Readonly<Record<string, string>>> {
  return { 'commands.md': await commandsPage(), 'questions.md': questionsPage() };
}

async function commandsPage(): Promise<string> {
  const parts = ['# Commands', '', 'Made from `--help` by `node scripts/docs.ts`; do not edit by hand.', ''];
  parts.push('```', (await helpOf(['--help'])).trimEnd(), '```', '');
  parts.push(...(await helpsOf(await allCommands(), [])));
  return parts.join('\n');
}

/** The help of each verb, and after it of the verbs it holds: `plan`, `plan size`. */
async function helpsOf(verbs: readonly CliCommand[], before: readonly string[]): Promise<readonly string[]> {
  const parts: string[] = [];
  for (const verb of verbs) {
    const words = [...before, verb.name];
    const help = (await helpOf([...words, '--help'])).trimEnd();
    parts.push(`${'#'.repeat(words.length + 1)} ${words.join(' ')}`, '', '```', help, '```', '');
    parts.push(...(await helpsOf(verb.verbs ?? [], words)));
  }
  return parts;
}

async function helpOf(args: readonly string[]): Promise<string> {
  let text = '';
  await run(args, {
    stdout: (part) => {
      text += part;
    },
    stderr: () => {},
    env: {},
    cwd: '.',
    now: () => new Date(0),
    newId: () => '',
    device: '',
    user: 'your account name',
    isTerminal: false,
  });
  return text;
}

function questionsPage(): string {
  const severities = [
    ['stop', 'Stops: nothing is written until they are mended'],
    ['explain', 'Questions: a person should answer'],
    ['note', 'Notes: good to know'],
  ] as const;
  const parts = [
    '# What stops, what asks',
    '',
    'Made from the catalogue of sentences by `node scripts/docs.ts`; do not edit by hand. Words in braces are filled in.',
    '',
  ];
  for (const [severity, title] of severities) {
    parts.push(`## ${title}`, '', '| code | sentence |', '|---|---|');
    for (const [code, its] of Object.entries(problemSeverities)) {
      if (its !== severity) continue;
      const sentence = templateOfMany(problemTemplate('en', code as ProblemCode));
      parts.push(`| \`${code}\` | ${sentence.replaceAll('|', '\\|')} |`);
    }
    parts.push('');
  }
  return parts.join('\n');
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  for (const [name, text] of Object.entries(await madePages())) writeFileSync(join(handbook, name), text);
}
