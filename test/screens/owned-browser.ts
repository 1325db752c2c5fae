/** A Chromium on a profile of its own, started by us, so that all of it can be killed as a dead battery would. */

import { type ChildProcess, spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { type BrowserContext, chromium, type Page } from '@playwright/test';
import { endWithUs } from './end-with-us.ts';
import { browserPath, patienceMs } from './screen-helper.ts';

export interface OwnedBrowser {
  readonly context: BrowserContext;
  readonly page: Page;
  /** SIGKILL to the browser and every process it started: nothing is finished, nothing is told. */
  kill(): Promise<void>;
}

/** `profile` is a folder that outlives the browser. */
export async function startOwnedBrowser(profile: string): Promise<OwnedBrowser> {
  const child = spawn(browserPath, [...flags, `--user-data-dir=${profile}`, 'about:blank'], {
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  endWithUs(child);
  const browser = await chromium.connectOverCDP(await devtoolsAddress(child));
  const context = browser.contexts()[0]!;
  const page = context.pages()[0] ?? (await context.newPage());
  await page.setViewportSize({ width: 1366, height: 768 });
  context.setDefaultTimeout(patienceMs);
  return {
    context,
    page,
    kill: async () => {
      if (child.exitCode === null && child.signalCode === null) await killAll(child);
      await browser.close().catch(() => {});
    },
  };
}

const flags = [
  '--headless=new',
  '--remote-debugging-port=0',
  '--no-sandbox',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  // Else its report of our own killing would outlive it for a while.
  '--disable-breakpad',
];

function devtoolsAddress(child: ChildProcess): Promise<string> {
  return new Promise((found, failed) => {
    let said = '';
    child.stderr!.on('data', (part: Buffer) => {
      said += part.toString();
      const match = /DevTools listening on (ws:\/\/\S+)\s/.exec(said);
      if (match !== null) found(match[1]!);
    });
    child.once('exit', () => failed(new Error(`the browser ended: ${said}`)));
  });
}

async function killAll(child: ChildProcess): Promise<void> {
  const exit = new Promise((done) => child.once('exit', done));
  // The group, and whoever left it: all in one go, before anybody can tidy up.
  const others = descendantsOf(child.pid!);
  process.kill(-child.pid!, 'SIGKILL');
  for (const pid of others) tryToKill(pid);
  await exit;
}

/** Already gone is as good. */
function tryToKill(pid: number): void {
  try {
    process.kill(pid, 'SIGKILL');
  } catch {
    // It was in the group.
  }
}

function descendantsOf(pid: number): number[] {
  const parents = new Map<number, number>();
  for (const name of readdirSync('/proc').filter((one) => /^\d+$/.test(one))) {
    try {
      // "pid (name) state parent …": the name may hold spaces and brackets.
      const rest = readFileSync(`/proc/${name}/stat`, 'utf8').replace(/^.*\) /s, '');
      parents.set(Number(name), Number(rest.split(' ')[1]));
    } catch {
      // It ended while we looked.
    }
  }
  const found = [pid];
  for (const one of found) {
    for (const [child, parent] of parents) if (parent === one) found.push(child);
  }
  return found.slice(1);
}
