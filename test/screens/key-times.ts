/**
 * What a key costs with so many belts on the screen, beside the same keys in the same page without a program and in an
 * empty page with one box, as fast as this machine is and with the processor slowed four times.
 * `node test/screens/key-times.ts [60]`
 */

import { type Measured, measureKeys, openEmptyPage, openFullSheet, openStillSheet } from './measure-keys.ts';
import { lastSurvey, openBrowser, personAt, serveDemo } from './screen-helper.ts';

const belts = Number(process.argv[2] ?? 60);
const served = await serveDemo();
const browser = await openBrowser();
const laptop = { width: 1366, height: 768 };
const context = await personAt(browser, laptop);
const still = await (await browser.newContext({ viewport: laptop, serviceWorkers: 'block' })).newPage();
const [sheet, empty] = [await context.newPage(), await context.newPage()];
await openFullSheet(sheet, `${served.url}#/sheets/${await lastSurvey(served.url)}`, belts);
await openStillSheet(still, sheet, `${served.url}still`);
await openEmptyPage(empty);
for (const slowed of [1, 4]) {
  for (const [name, page] of [
    [`${belts} belts`, sheet],
    ['the same page without a program', still],
    ['empty page', empty],
  ] as const) {
    await page.bringToFront();
    say(`slowed ${slowed} times, ${name}`, await measureKeys(browser, page, slowed));
  }
}
await browser.close();
await served.remove();

function say(what: string, { clockMs, processorMs, longestBetweenMs }: Measured): void {
  const at = (values: readonly number[], share: number) =>
    values[Math.floor(share * (values.length - 1))]!.toFixed(1);
  const both = (values: readonly number[]) => `median ${at(values, 0.5)} ms, p95 ${at(values, 0.95)} ms`;
  process.stdout.write(
    `${what}, ${processorMs.length} keys: processor ${both(processorMs)}; clock ${both(clockMs)}; longest work between keys ${longestBetweenMs.toFixed(1)} ms\n`,
  );
}
