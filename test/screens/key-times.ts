/**
 * How long a key takes with so many belts on the screen and the CPU slowed four times: from the key to the next
 * frame that shows it, measured inside the browser. `node test/screens/key-times.ts [60]`
 */

import { keyTimes } from './measure-keys.ts';
import { lastSurvey, openBrowser, personAt, serveDemo } from './screen-helper.ts';

const belts = Number(process.argv[2] ?? 60);
const served = await serveDemo();
const browser = await openBrowser();
const context = await personAt(browser, { width: 1366, height: 768 });
const page = await context.newPage();
const times = await keyTimes(page, {
  url: served.url,
  surveyId: await lastSurvey(served.url),
  belts,
  slowed: 4,
});
const at = (share: number) => times[Math.floor(share * (times.length - 1))]!.toFixed(1);
process.stdout.write(
  `${belts} belts, CPU slowed 4 times, ${times.length} keys: work for a key median ${at(0.5)} ms, p95 ${at(0.95)} ms, longest ${at(1)} ms\n`,
);
await browser.close();
await served.remove();
