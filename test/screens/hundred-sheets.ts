/**
 * A hundred sheets of 6 belts, 5 species and 120 lengths in a row: is the last as quick as the first?
 * `node test/screens/hundred-sheets.ts [100]`
 */

import { lastSurvey, openBrowser, personAt, serveDemo, stationsOf } from './screen-helper.ts';
import { inventSlate, typeBelts, typeStation } from './typist.ts';

const times = Number(process.argv[2] ?? 100);
const served = await serveDemo();
const browser = await openBrowser();
const surveyId = await lastSurvey(served.url);
const page = await (await personAt(browser, { width: 1366, height: 768 })).newPage();
await page.goto(`${served.url}#/sheets/${surveyId}`);
await page.getByRole('link', { name: 'Type a new sheet' }).click();
const devtools = await page.context().newCDPSession(page);
const msPerKey: number[] = [];
/** From the key that saves to the first cell of the next sheet. */
const msToNext: number[] = [];
const heapMB: number[] = [];
await page.locator('.code:focus').waitFor();
for (let i = 1; i <= times; i += 1) {
  const slate = inventSlate(`H${i}`, i);
  await typeStation(page, slate);
  const begun = performance.now();
  const keys = await typeBelts(page, slate);
  msPerKey.push((performance.now() - begun) / keys);
  const saved = performance.now();
  await page.keyboard.press('Enter');
  await page.getByText(`Sheet ${slate.code} is saved on this laptop`).waitFor();
  await page.locator('.code:focus').waitFor();
  msToNext.push(performance.now() - saved);
  await devtools.send('HeapProfiler.collectGarbage');
  heapMB.push((await devtools.send('Runtime.getHeapUsage')).usedSize / 1e6);
  if (i % 10 === 0) process.stderr.write(`${i} sheets typed\n`);
}
compare('ms for a key', msPerKey);
compare('ms from saving to the next sheet', msToNext);
compare('MB of memory after it', heapMB);
await page.goto(`${served.url}#/sheets/${surveyId}/waiting`);
await page.getByText('No sheet is waiting').waitFor({ timeout: 120_000 });
const stations = (await stationsOf(served.url, surveyId)).filter((one) => /^H\d+$/.test(one.code));
process.stdout.write(
  `${stations.filter((one) => one.animals === 120).length} of ${times} sheets whole in the book, ${stations.length} in all\n`,
);
await browser.close();
await served.remove();

function compare(what: string, values: readonly number[]): void {
  const middle = (some: readonly number[]) => some.toSorted((a, b) => a - b)[Math.floor(some.length / 2)]!;
  const [first, last] = [middle(values.slice(0, 10)), middle(values.slice(-10))];
  process.stdout.write(
    `${what}, medians: first ten ${first.toFixed(2)}, last ten ${last.toFixed(2)}, ratio ${(last / first).toFixed(2)}\n`,
  );
}
