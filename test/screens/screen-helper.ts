/** A server on a demo book of its own, and a real Chromium that looks at it. */

import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { existsSync, mkdirSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from '@playwright/test';
import { copyOfMadeOnce, onceInARun } from '../made-once.ts';
import { ownFolder } from '../own-folder.ts';
import { endWithUs } from './end-with-us.ts';

const root = resolve(import.meta.dirname, '../..');
const program = join(root, 'bin/slateline.js');
export const shots = join(import.meta.dirname, 'shots');
export const browserPath = process.env['SLATELINE_CHROMIUM'] ?? '/usr/bin/chromium';
export const hasBrowser = existsSync(browserPath);
if (!hasBrowser) {
  // biome-ignore lint/suspicious/noConsole: a test that did not run says so loudly
  console.warn(
    `The screens were NOT tested: there is no browser at ${browserPath}. On Debian: apt-get install chromium; elsewhere name one in SLATELINE_CHROMIUM.`,
  );
}

export interface Served {
  readonly url: string;
  readonly book: string;
  readonly isRunning: boolean;
  /** As a power cut would: nothing is finished. */
  kill(): Promise<void>;
  /** At the same port as before. */
  start(): Promise<void>;
  remove(): Promise<void>;
}

export function serveDemo(): Promise<Served> {
  return serveBook('demo', ['demo']);
}

/** A book that was just made: nothing in it. */
export function serveEmpty(): Promise<Served> {
  return serveBook('empty', ['new', '--name', 'North reefs']);
}

/** Builds the screens when they are older than their sources. */
async function serveBook(name: string, making: readonly string[]): Promise<Served> {
  const run = (...words: string[]) => execFileSync(process.execPath, words, { cwd: root, stdio: 'ignore' });
  const build = () => run('scripts/build-web.ts', '--if-needed');
  const make = (to: string) => run(program, ...making, '--book', to);
  const folder = ownFolder('screens');
  const book = join(folder, 'book');
  if (process.env['VITEST'] === undefined) {
    build();
    make(book);
  } else {
    await onceInARun('screens', build);
    await copyOfMadeOnce(`${name}-served`, { make, to: book });
  }
  let { child, port } = await startServer(book, 0);
  return {
    get url() {
      return `http://127.0.0.1:${port}/`;
    },
    book,
    get isRunning() {
      return isRunning(child);
    },
    kill: () => ended(child, 'SIGKILL'),
    start: async () => {
      ({ child, port } = await startAgain(book, port));
    },
    remove: async () => {
      await ended(child, 'SIGTERM');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Somebody may have been given its port meanwhile, and has it for a moment. */
async function startAgain(book: string, port: number, triesLeft = 60): ReturnType<typeof startServer> {
  try {
    return await startServer(book, port);
  } catch (error) {
    if (triesLeft === 0 || !/is using port/.test(String(error))) throw error;
    await sleep(1000);
    return startAgain(book, port, triesLeft - 1);
  }
}

async function startServer(book: string, port: number): Promise<{ child: ChildProcess; port: number }> {
  const verb = [program, 'serve', '--book', book, '--port', String(port)];
  const child = spawn(process.execPath, verb, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
  child.stderr.pipe(process.stderr, { end: false });
  endWithUs(child);
  const url = await new Promise<string>((found, failed) => {
    let said = '';
    const hear = (part: Buffer) => {
      said += part.toString();
      const match = /http:\/\/[^/]+:(\d+)\//.exec(said);
      if (match !== null) found(match[1]!);
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    // Not "exit": its last words may come after it.
    child.once('close', () => failed(new Error(`the server ended: ${said}`)));
  });
  return { child, port: Number(url) };
}

function isRunning(child: ChildProcess): boolean {
  return child.exitCode === null && child.signalCode === null;
}

async function ended(child: ChildProcess, signal: 'SIGKILL' | 'SIGTERM'): Promise<void> {
  if (!isRunning(child)) return;
  const exit = new Promise((done) => child.once('exit', done));
  child.kill(signal);
  await exit;
}

export async function openBrowser(): Promise<Browser> {
  mkdirSync(shots, { recursive: true });
  return chromium.launch({
    executablePath: browserPath,
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
}

/** No test measures time: this only ends what would never end, on a machine that may be busy with other things. */
export const patienceMs = 90_000;

export interface Settings {
  readonly theme?: 'paper' | 'night' | 'sun';
  readonly language?: 'en' | 'fr';
}

export async function personAt(
  browser: Browser,
  size: { readonly width: number; readonly height: number },
  settings: Settings = {},
  device: BrowserContextOptions = {},
): Promise<BrowserContext> {
  const context = await browser.newContext({ ...device, viewport: size });
  context.setDefaultTimeout(patienceMs);
  await nameRecorder(context, settings);
  return context;
}

/** Who types, in which light and language: as if it had been set the evening before. */
export async function nameRecorder(
  context: BrowserContext,
  { theme = 'paper', language = 'en' }: Settings = {},
): Promise<void> {
  const settings = JSON.stringify({ theme, language, who: 'Recorder A' });
  await context.addInitScript((text) => {
    if (localStorage.getItem('slateline-settings') === null) localStorage.setItem('slateline-settings', text);
  }, settings);
}

/** Everything the browser complained about, except that a server is not there when it is not. */
export function complaintsOf(page: Page): string[] {
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    const isGone =
      /ERR_CONNECTION_REFUSED|ERR_INTERNET_DISCONNECTED|ERR_CONNECTION_RESET|ERR_EMPTY_RESPONSE|ERR_SOCKET_NOT_CONNECTED/;
    // A conflict is an answer; the browser writes every 409 to its console.
    const isAnswer = /status of 40[49]/;
    if (message.type() !== 'error' && message.type() !== 'warning') return;
    if (!isGone.test(message.text()) && !isAnswer.test(message.text())) complaints.push(message.text());
  });
  return complaints;
}

export async function lastSurvey(url: string): Promise<string> {
  const answer = (await (await fetch(`${url}api/surveys`)).json()) as {
    surveys: { survey: { id: string } }[];
  };
  return answer.surveys.at(-1)!.survey.id;
}

export async function stationsOf(
  url: string,
  surveyId: string,
): Promise<{ id: string; code: string; animals: number; measured: number }[]> {
  const answer = await fetch(`${url}api/surveys/${surveyId}/stations`);
  return (
    (await answer.json()) as { stations: { id: string; code: string; animals: number; measured: number }[] }
  ).stations;
}
