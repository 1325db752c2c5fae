/**
 * The long form of the killed browser's test: so many times a sheet is acknowledged, the next one half typed, and the
 * whole browser killed at a moment of chance; the server is there for some of them (the sheet may be on its way) and
 * gone for others. At the end every acknowledged sheet is in the book, once, and every draft that was called kept is
 * on the laptop. `node test/screens/hundred-killed-browsers.ts [100] [seed]`
 */

import type { Page } from '@playwright/test';
import { ownFolder } from '../own-folder.ts';
import { startOwnedBrowser } from './owned-browser.ts';
import { lastSurvey, serveDemo, stationsOf } from './screen-helper.ts';
import { inventSlate, typeStation } from './typist.ts';
import { generatorFrom } from './typist-luck.ts';

const times = Number(process.argv[2] ?? 100);
const luck = generatorFrom(Number(process.argv[3] ?? 9));
const profile = ownFolder('profile');
const served = await serveDemo();
const surveyId = await lastSurvey(served.url);
const listAddress = `${served.url}#/sheets/${surveyId}`;

let browser = await startOwnedBrowser(profile);
await browser.page.goto(listAddress);
await browser.page.evaluate(() => navigator.serviceWorker.ready);
let isServed = true;
let serverChanges = 0;
for (let i = 1; i <= times; i += 1) {
  await oneSheetAndAHalf(browser.page, i);
  await new Promise((done) => setTimeout(done, luck() * 60));
  await browser.kill();
  if (luck() < 0.25) await turnServer();
  browser = await startOwnedBrowser(profile);
  await browser.page.goto(listAddress);
  if (i % 10 === 0) process.stderr.write(`${i} browsers killed\n`);
}
if (!isServed) await turnServer();
const { page } = browser;
await page.goto(`${listAddress}/waiting`);
await page.getByText('No sheet is waiting').waitFor({ timeout: 120_000 });
const stations = (await stationsOf(served.url, surveyId)).filter((one) => /^K\d+$/.test(one.code));
const codes = new Set(stations.map((one) => one.code));
const whole = stations.filter((one) => one.animals === 3 && one.measured === 3);
const drafts = await draftCodes(page);
process.stdout.write(
  `${times} browsers killed, the server stopped or started ${serverChanges} times: ${times - codes.size} sheets lost, ${stations.length - codes.size} doubled, ${stations.length - whole.length} not whole; ${times - drafts.size} drafts lost\n`,
);
await browser.kill();
await served.remove();
process.exitCode = codes.size === times && whole.length === times && drafts.size === times ? 0 : 1;

async function oneSheetAndAHalf(page: Page, i: number): Promise<void> {
  await page.getByRole('link', { name: 'Type a new sheet' }).click();
  await page.locator('.code:focus').waitFor();
  // The browser's own small settings are written late and may have died with it; they are no data.
  await page.getByLabel('Who types').fill('Recorder A');
  await page.locator('.code').focus();
  await typeStation(page, inventSlate(`K${i}`, i));
  await page.keyboard.type('sand');
  await page.keyboard.press('Enter');
  await page.keyboard.type('182 190 201');
  await page.keyboard.press('Control+s');
  // Acknowledged: from now on it must not be lost.
  await page.getByText(`Sheet K${i} is saved on this laptop`).waitFor();
  await page.locator('.code:focus').waitFor();
  await page.keyboard.type(`H${i}`);
  await page.getByText('kept on this laptop').waitFor();
  // The words appear with the first letter that is kept; the last one is a moment behind.
  await page.waitForFunction(isKept, `H${i}`);
}

/** Runs in the browser: whether a draft of that code is in its store. */
async function isKept(code: string): Promise<boolean> {
  const book = await new Promise<IDBDatabase>((done, failed) => {
    const opening = indexedDB.open('slateline');
    opening.onsuccess = () => done(opening.result);
    opening.onerror = () => failed(opening.error);
  });
  const drafts = await new Promise<{ typed: { station: { code: string } } }[]>((done, failed) => {
    const asking = book.transaction('drafts').objectStore('drafts').getAll();
    asking.onsuccess = () => done(asking.result);
    asking.onerror = () => failed(asking.error);
  });
  book.close();
  return drafts.some((one) => one.typed.station.code === code);
}

async function draftCodes(page: Page): Promise<Set<string>> {
  await page.goto(listAddress);
  const links = page.getByRole('link', { name: /^\s*H\d+/ });
  await links.first().waitFor();
  const said = await links.allTextContents();
  return new Set(said.flatMap((text) => /\bH\d+/.exec(text)?.[0] ?? []));
}

async function turnServer(): Promise<void> {
  if (isServed) await served.kill();
  else await served.start();
  isServed = !isServed;
  serverChanges += 1;
}
