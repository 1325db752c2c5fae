/** The first evening with a new book: no survey yet, one is begun on the screen, its first sheet typed. */

import { expect, it } from 'vitest';
import { shots } from './screen-helper.ts';
import { screenTests } from './screen-tests.ts';

screenTests('the first evening with a new book', { book: 'empty' }, (here) => {
  it('a survey is begun, what cannot be read is asked about, and the second begins as the first', async () => {
    const page = await here.sitDown();
    await page.goto(here.served.url);
    await page.getByRole('button', { name: 'New survey' }).click();
    await page.getByLabel('Name of the survey').fill('North 2027');
    await page.getByLabel('First day').fill('3/4/2027');
    await page.getByText('Sat 3 April 2027, or Thu 4 March 2027?').waitFor();
    await page.getByLabel('Width of a belt').fill('1,5');
    await page.getByLabel('Strata, one on each line').fill('reef flat, 1,200\nlagoon, 12,5');
    await page.getByLabel('Species looked for').fill('Holothuria scabra, HSC, sandfish\nHolothuria atra');
    await page.getByRole('button', { name: 'Make the survey' }).click();
    await page.getByText('Strata, line 1: "1,200" is no area in hectares.').waitFor();
    await page.screenshot({ path: `${shots}/new-survey-asks.png` });

    await page.getByLabel('First day').fill('3 Apr 2027');
    await page.getByText('Sat 3 April 2027').waitFor();
    await page.getByLabel('Strata, one on each line').fill('reef flat, 1200\nlagoon, 12,5');
    await page.getByRole('button', { name: 'Make the survey' }).click();
    await page.getByText('No sheet is typed yet').waitFor();

    const surveys = await answerOf<{ surveys: { survey: { id: string; starts: string } }[] }>('api/surveys');
    const { id, starts } = surveys.surveys[0]!.survey;
    expect(starts).toBe('2027-04-03');
    const words = await answerOf<{
      strata: { name: string; areaHa: number }[];
      protocol: { widthM: number };
      targets: string[];
    }>(`api/surveys/${id}/words`);
    expect(words.strata.map(({ name, areaHa }) => [name, areaHa]).sort()).toEqual([
      ['lagoon', 12.5],
      ['reef flat', 1200],
    ]);
    expect(words.protocol.widthM).toBe(1.5);
    expect(words.targets).toHaveLength(2);

    await page.goto(`${here.served.url}#/`);
    await page.getByRole('button', { name: 'New survey' }).click();
    await page.getByText('as in North 2027').waitFor({ state: 'attached' });
    const species = await page.getByLabel('Species looked for').inputValue();
    expect(species.split('\n').sort()).toEqual(['Holothuria atra', 'Holothuria scabra, HSC, sandfish']);
    await page.getByLabel('Name of the survey').fill('North 2028');
    await page.getByRole('button', { name: 'Make the survey' }).click();
    await page.getByText('No sheet is typed yet').waitFor();
  });

  async function answerOf<Answer>(path: string): Promise<Answer> {
    return (await (await fetch(`${here.served.url}${path}`)).json()) as Answer;
  }
});
