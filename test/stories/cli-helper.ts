/** Runs the command line in this process, with a fixed clock and identities, and gives back what it printed. */

import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { v7 } from 'uuid';
import { run } from '../../src/cli/run.ts';
import { copyOfMadeOnce } from '../made-once.ts';

export interface Ran {
  readonly exitCode: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Goes with all that is left when the tests end: run-folder.ts. */
export function temporaryFolder(): string {
  return mkdtempSync(join(tmpdir(), 'slateline-test-'));
}

/** The demo book, in a folder that the test may change. */
export async function demoBook(): Promise<string> {
  const book = join(temporaryFolder(), 'demo');
  await copyOfMadeOnce('demo-told', { make: makeDemo, to: book });
  return book;
}

async function makeDemo(folder: string): Promise<void> {
  const { exitCode, stderr } = await slateline('demo', '--book', folder);
  if (exitCode !== 0) throw new Error(`demo failed: ${stderr}`);
}

export async function slateline(...args: string[]): Promise<Ran> {
  let stdout = '';
  let stderr = '';
  const exitCode = await run(args, {
    stdout: (text) => {
      stdout += text;
    },
    stderr: (text) => {
      stderr += text;
    },
    env: {},
    cwd: tmpdir(),
    now: () => new Date('2026-10-01T08:00:00Z'),
    newId: () => v7(),
    device: 'test laptop',
    user: 'Officer A',
    isTerminal: false,
  });
  return { exitCode, stdout, stderr };
}

export interface JsonOutput {
  readonly command: string;
  readonly version: string;
  readonly dataVersion: string;
  readonly settings: Record<string, unknown>;
  // biome-ignore lint/suspicious/noExplicitAny: tests read the contract as any program would
  readonly rows: any[];
  // biome-ignore lint/suspicious/noExplicitAny: as above
  readonly problems: any[];
}

export async function slatelineJson(...args: string[]): Promise<JsonOutput & { readonly exitCode: number }> {
  const ran = await slateline(...args, '--json');
  return { ...(JSON.parse(ran.stdout) as JsonOutput), exitCode: ran.exitCode };
}

export type Cell = string | number;

/** Writes CSV tables into a new folder: `{ counts: [header, ...rows] }`. */
export function writeFolder(tables: Readonly<Record<string, readonly (readonly Cell[])[]>>): string {
  const folder = temporaryFolder();
  for (const [name, rows] of Object.entries(tables)) {
    writeFileSync(join(folder, `${name}.csv`), `${rows.map((row) => row.join(',')).join('\n')}\n`);
  }
  return folder;
}

/** A new empty book, and the tables imported into it. */
export async function bookWith(
  tables: Readonly<Record<string, readonly (readonly Cell[])[]>>,
): Promise<string> {
  const book = join(temporaryFolder(), 'book');
  await slateline('new', '--book', book);
  const imported = await slateline('import', writeFolder(tables), '--book', book);
  if (imported.exitCode !== 0) throw new Error(`import failed: ${imported.stderr}`);
  return book;
}
