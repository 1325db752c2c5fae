/**
 * The long form of the evening's test: so many times a sheet is saved, the server is killed at a moment of chance
 * within the save, the page is reloaded, and the server comes back. At the end every sheet that the screen called
 * saved is in the book, once. `node test/screens/hundred-kills.ts [100]`
 */

import { lastSurvey, openBrowser, personAt, serveDemo, stationsOf } from './screen-helper.ts';
import { inventSlate, typeStation } from './typist.ts';
import { generatorFrom } from './typist-luck.ts';

const times = Number(process.argv[2] ?? 100);
const luck = generatorFrom(4);
const served = await serveDemo();
const browser = await openBrowser();
const surveyId = await lastSurvey(served.url);
const page = await (await personAt(browser, { width: 1366, height: 768 })).newPage();
await page.goto(`${served.url}#/sheets/${surveyId}`);
await page.getByRole('link', { name: 'Type a new sheet' }).click();
await page.evaluate(() => navigator.serviceWorker.ready);
for (let i = 1; i <= times; i += 1) {
  await page.locator('.code:focus').waitFor();
  await typeStation(page, inventSlate(`K${i}`, i));
  await page.keyboard.type('sand');
  await page.keyboard.press('Enter');
  await page.keyboard.type('182 190 201');
  await page.keyboard.press('Control+s');
  // Acknowledged: from now on it must not be lost.
  await page.getByText(`Sheet K${i} is saved on this laptop`).waitFor();
  await new Promise((done) => setTimeout(done, luck() * 60));
  await served.kill();
  await page.reload();
  await served.start();
}
await page.goto(`${served.url}#/sheets/${surveyId}/waiting`);
await page.getByText('No sheet is waiting').waitFor({ timeout: 120_000 });
const stations = (await stationsOf(served.url, surveyId)).filter((one) => /^K\d+$/.test(one.code));
const whole = stations.filter((one) => one.animals === 3 && one.measured === 3);
const lost = times - new Set(stations.map((one) => one.code)).size;
process.stdout.write(
  `${times} kills: ${lost} lost, ${stations.length - new Set(stations.map((one) => one.code)).size} doubled, ${stations.length - whole.length} not whole\n`,
);
await browser.close();
await served.remove();
process.exitCode = lost > 0 || whole.length !== times ? 1 : 0;
