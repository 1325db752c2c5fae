/** The evening after the dive, in a real browser: sheets typed, online or not, and none lost or doubled. */

import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expect, it } from 'vitest';
import { shots, stationsOf } from './screen-helper.ts';
import { opensAlone, phone, screenTests, sendAs } from './screen-tests.ts';
import { cellMoves, dataKeys, inventSlate, type Slate, typeBelts, typeStation } from './typist.ts';

screenTests('the evening after the dive', { book: 'demo' }, (here) => {
  async function saveAndWait(page: Page, code: string): Promise<void> {
    await page.keyboard.press('Enter');
    await page.getByText(`Sheet ${code} is saved on this laptop`).waitFor();
  }

  async function oneSheet(page: Page, slate: Slate): Promise<number> {
    await typeStation(page, slate);
    const keys = await typeBelts(page, slate);
    await saveAndWait(page, slate.code);
    await page.locator('.code:focus').waitFor();
    return keys;
  }

  // How quick the last of a hundred is beside the first: hundred-sheets.ts.
  it('five sheets of 120 lengths cost no key that is neither data nor a move, and none leaves a burden to the next', async () => {
    const page = await here.sitDown();
    await here.newSheet(page);
    let first: Burden | null = null;
    for (let i = 1; i <= 5; i += 1) {
      const slate = inventSlate(`T${i}`, i);
      // By hand: names and figures on the slate, one move after each, one from belt to belt.
      expect(await oneSheet(page, slate)).toBe(dataKeys(slate) + cellMoves(slate));
      await here.untilInBook(slate.code, [{ animals: 120, measured: 120 }]);
      // An invariance: the sheet that waits to be typed is the same each time, so what the page carries is as well.
      first ??= await burdenOf(page);
      await expect.poll(async () => moreThan(first!, await burdenOf(page))).toEqual([]);
    }
  });

  it('day and times are typed as they stand on the slate, said back, and never saved as a guess', async () => {
    const page = await here.sitDown();
    await here.newSheet(page);
    await page.keyboard.type('W1');
    for (let cell = 0; cell < 2; cell += 1) await page.keyboard.press('Enter');
    const day = page.locator('[data-cell="station/date"]');
    await expect.poll(() => day.evaluate((cell) => cell === document.activeElement)).toBe(true);
    await day.fill('13/13/2026');
    await page.getByText('"13/13/2026" cannot be read as one day.').waitFor();
    await page.keyboard.press('Control+s');
    await page.getByText('The day cannot be read; write it as').waitFor();
    // 9 October or 10 September: the survey was in September (7 to 15).
    await day.fill('9/10/2026');
    await page.getByText('Thu 10 September 2026').waitFor();
    await page.keyboard.press('Enter');
    await page.keyboard.type('0810');
    await page.keyboard.press('Enter');
    await page.keyboard.type('noon');
    await page.getByText('"noon" is no time').waitFor();
    await page.keyboard.press('Control+s');
    await page.getByText('Sheet W1 is saved on this laptop').waitFor();
    const { id } = await here.untilInBook('W1');
    const { sheet } = await here.ask<{ sheet: { station: object } }>(`sheets/${id}`);
    expect(sheet.station).toMatchObject({
      date: '2026-09-10',
      timeStart: '08:10',
      timeEnd: null,
      note: 'End: noon',
    });
  });

  it('a running list is read as the diver wrote it, and what is odd stands in the margin', async () => {
    const page = await here.sitDown();
    await here.newSheet(page);
    await page.getByLabel('Typed as').selectOption('list');
    await page.locator('.code').focus();
    await typeStation(page, inventSlate('L1', 1));
    for (const list of [
      'sandfish 182 190 lolly 150 sandfish 24 +12',
      'none',
      'sanfish 190',
      'starfish 80',
      '',
      'sand',
    ]) {
      await page.keyboard.type(list);
      await page.keyboard.press('Enter');
    }
    await page.getByText('3 animals, 24-190 mm, 12 more counted').waitFor();
    await page.getByText('240 mm', { exact: false }).first().waitFor();
    await page.getByText('"sanfish" read as sandfish').waitFor();
    await page.getByText('"starfish" is no species of this book').waitFor();
    await page.getByText('Belt 5 is blank').waitFor();
    await page.getByText('sand: how many?').waitFor();
    await page.screenshot({ path: join(shots, 'sheet-list-margin.png'), fullPage: true });
    // What cannot be read would be lost: only this stops.
    await page.keyboard.press('Control+s');
    await page.getByText('they would be lost').waitFor();
    // One step back each: the words that were typed last are gone, their cell is in hand again.
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('.list').nth(5).inputValue()).toBe('');
  });

  it('the server goes away in the middle of a sheet: it waits on this laptop, survives a reload, and goes once', async () => {
    const page = await here.sitDown();
    await here.newSheet(page);
    await opensAlone(page);
    const slate = inventSlate('OFF1', 77);
    await typeStation(page, slate);
    await typeBelts(page, { ...slate, belts: slate.belts.slice(0, 3) });
    await here.served.kill();
    await page.getByText('kept on this laptop').waitFor();
    await page.reload();
    await expect.poll(() => page.locator('.code').inputValue()).toBe('OFF1');
    const firstLine = slate.belts[0]![0]!.lengthsMm.join(' ');
    await expect.poll(() => page.locator('.lengths').first().inputValue()).toBe(firstLine);
    await page.locator('section').nth(3).locator('.species').first().focus();
    await typeBelts(page, { ...slate, belts: slate.belts.slice(3) });
    await saveAndWait(page, 'OFF1');
    await page.getByText('1 sheet is saved on this laptop, waiting for the book').waitFor();
    await here.openRoom(page, 'sheets', 'waiting');
    await page.reload();
    await page.getByRole('cell', { name: 'saved on this laptop, waiting for the book' }).waitFor();
    await page.screenshot({ path: join(shots, 'waiting.png'), fullPage: true });
    // Opened again while it waits: the second saving follows the first and is no conflict with it.
    await page.getByRole('link', { name: 'Open' }).click();
    await page.locator('.more').first().fill('5');
    await page.keyboard.press('Control+s');
    await page.getByText('2 sheets are saved on this laptop').waitFor();
    await here.openRoom(page, 'sheets', 'waiting');
    await here.served.start();
    await page.getByText('No sheet is waiting').waitFor();
    await here.untilInBook('OFF1', [{ animals: 125, measured: 120 }]);
  });

  it('a server killed while it saves loses no sheet and doubles none', async () => {
    const page = await here.sitDown();
    await here.newSheet(page);
    await opensAlone(page);
    for (let i = 1; i <= 3; i += 1) {
      const slate = inventSlate(`K${i}`, i);
      await typeStation(page, slate);
      await typeBelts(page, { ...slate, belts: slate.belts.slice(0, 1) });
      const sent = page.waitForRequest((request) => request.method() === 'PUT');
      await page.keyboard.press('Control+s');
      await sent;
      await here.served.kill();
      await page.reload();
      await here.served.start();
      await here.untilInBook(`K${i}`);
      await here.newSheet(page);
    }
    for (let i = 1; i <= 3; i += 1) await here.untilInBook(`K${i}`, [{ animals: 20 }]);
  });

  it('two tabs on one sheet: the second is told, reads only, and can take it over', async () => {
    const one = await here.sitDown();
    const two = await one.context().newPage();
    here.listenTo(two);
    const [station] = await stationsOf(here.served.url, here.surveyId);
    await here.openRoom(one, 'sheets', station!.id);
    await one.locator('.species').last().waitFor();
    await here.openRoom(two, 'sheets', station!.id);
    await two.getByText('being typed in another tab').waitFor();
    await two.locator('.species[readonly]').first().waitFor();
    await two.getByRole('button', { name: 'Type it here' }).click();
    await one.getByText('Another tab has taken this sheet over').waitFor();
    await expect.poll(() => two.locator('.species').first().getAttribute('readonly')).toBeNull();
  });

  it('a sheet that somebody else changed meanwhile is shown side by side and never overwritten', async () => {
    const page = await here.sitDown();
    const [station] = await stationsOf(here.served.url, here.surveyId);
    await here.openRoom(page, 'sheets', station!.id);
    await page.locator('.more').first().fill('7');
    await changeInBook(station!.id);
    await page.keyboard.press('Control+s');
    await page.getByRole('link', { name: '1 sheet needs you' }).click();
    await page.getByText('Nothing was overwritten').waitFor();
    await page.screenshot({ path: join(shots, 'conflict.png'), fullPage: true });
    for (const choice of await page.getByRole('radio', { name: 'typed here' }).all()) await choice.check();
    await page.getByRole('button', { name: 'Save what I chose' }).click();
    await page.getByText('No sheet is waiting').waitFor();
    await here.untilInBook(station!.code, [{ id: station!.id, animals: station!.animals + 7 }]);
  });

  it('position and depth of the slate are in the book afterwards, and what cannot be read is in the note', async () => {
    const page = await here.sitDown({ size: phone });
    await here.newSheet(page);
    await page.getByText('More of the slate').click();
    await page.locator('.code').focus();
    await typeStation(page, inventSlate('P1', 1));
    for (const cell of ['17 45.300 S 177 24.0 E', '12 or 13', '', '8,5']) {
      await page.keyboard.type(cell);
      await page.keyboard.press('Enter');
    }
    await page.getByText('read as 17° 45.300′ S, 177° 24.000′ E').waitFor();
    await page.getByText('"12 or 13" is no number of metres').waitFor();
    await page.screenshot({ path: join(shots, 'slate-head-phone.png'), fullPage: true });
    await page.keyboard.press('Control+s');
    const { id } = await here.untilInBook('P1');
    const { sheet } = await here.ask<{ sheet: { station: Record<string, unknown> } }>(`sheets/${id}`);
    // By hand: 45.3 / 60 = 0.755 and 24 / 60 = 0.4.
    expect(sheet.station['latitudeDeg']).toBeCloseTo(-17.755, 10);
    expect(sheet.station['longitudeDeg']).toBeCloseTo(177.4, 10);
    expect(sheet.station).toMatchObject({ depthM: null, visibilityM: 8.5, note: 'Depth, m: 12 or 13' });
  });

  it('a second typing shows where it differs from the first', async () => {
    const page = await here.sitDown();
    await here.newSheet(page);
    const slate = inventSlate('D1', 5);
    const one = { ...slate, belts: slate.belts.slice(0, 1) };
    await typeStation(page, one);
    await typeBelts(page, one);
    await page.keyboard.press('Control+s');
    const { id } = await here.untilInBook('D1');
    await here.openRoom(page, 'sheets', id, 'again');
    await page.locator('.species').first().focus();
    const [first, ...others] = one.belts[0]!;
    const slip = { ...first!, lengthsMm: [first!.lengthsMm[0]! + 1, ...first!.lengthsMm.slice(1)] };
    await typeBelts(page, { code: 'D1', belts: [[slip, ...others]] });
    await page.getByRole('button', { name: 'Compare with the first' }).click();
    await page.getByText('1 place differs').waitFor();
    await page.screenshot({ path: join(shots, 'typed-twice.png'), fullPage: true });
  });

  /** Somebody else, on another program, writes a note into belt 1 and counts one animal more there. */
  async function changeInBook(stationId: string): Promise<void> {
    const path = `sheets/${stationId}`;
    const { revision, sheet } = await here.ask<{ revision: string; sheet: { tallies: { count: number }[] } }>(
      path,
    );
    sheet.tallies[0]!.count += 1;
    await sendAs(here, 'Recorder B', { path, body: { base: revision, sheet } });
  }
});

interface Burden {
  readonly nodes: number;
  readonly listeners: number;
}

/** What would make every next key slower, in the page or held by it; what is let go is not counted. */
async function burdenOf(page: Page): Promise<Burden> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Performance.enable');
  await devtools.send('HeapProfiler.collectGarbage');
  const { metrics } = await devtools.send('Performance.getMetrics');
  await devtools.detach();
  const found = new Map(metrics.map(({ name, value }) => [name, value]));
  return { nodes: found.get('Nodes')!, listeners: found.get('JSEventListeners')! };
}

/** An empty sheet has some 1800 nodes; a margin of its strip comes and goes. */
function moreThan(first: Burden, now: Burden): readonly string[] {
  const more: string[] = [];
  if (now.nodes > first.nodes + 100) more.push(`${now.nodes} nodes, ${first.nodes} at first`);
  if (now.listeners > first.listeners) more.push(`${now.listeners} listeners, ${first.listeners} at first`);
  return more;
}
