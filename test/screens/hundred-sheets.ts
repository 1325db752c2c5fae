/** A hundred sheets in a row: is the last as quick as the first? `node test/screens/hundred-sheets.ts [100]` */

import { lastSurvey, openBrowser, personAt, serveDemo, stationsOf } from './screen-helper.ts';
import { inventSlate, typeBelts, typeStation } from './typist.ts';

const times = Number(process.argv[2] ?? 100);
const served = await serveDemo();
const browser = await openBrowser();
const surveyId = await lastSurvey(served.url);
const page = await (await personAt(browser, { width: 1366, height: 768 })).newPage();
await page.goto(`${served.url}#/sheets/${surveyId}`);
await page.getByRole('link', { name: 'Type a new sheet' }).click();
const msPerKey: number[] = [];
for (let i = 1; i <= times; i += 1) {
  await page.locator('.code:focus').waitFor();
  const slate = inventSlate(`H${i}`, i);
  await typeStation(page, slate);
  const begun = performance.now();
  const keys = await typeBelts(page, slate);
  msPerKey.push((performance.now() - begun) / keys);
  await page.keyboard.press('Enter');
  await page.getByText(`Sheet ${slate.code} is saved on this laptop`).waitFor();
}
const middle = (some: number[]) => some.toSorted((a, b) => a - b)[Math.floor(some.length / 2)]!.toFixed(2);
process.stdout.write(
  `ms for a key: first ten ${middle(msPerKey.slice(0, 10))}, last ten ${middle(msPerKey.slice(-10))}\n`,
);
await page.goto(`${served.url}#/sheets/${surveyId}/waiting`);
await page.getByText('No sheet is waiting').waitFor({ timeout: 120_000 });
const stations = (await stationsOf(served.url, surveyId)).filter((one) => /^H\d+$/.test(one.code));
process.stdout.write(
  `${stations.filter((one) => one.animals === 120).length} of ${times} sheets whole in the book\n`,
);
await browser.close();
await served.remove();
