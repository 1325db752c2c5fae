import { type Place, sendAs } from './screen-tests.ts';

interface InBook {
  readonly revision: string;
  readonly sheet: {
    readonly transects: { readonly id: string; noneSeen: boolean }[];
    tallies: readonly { readonly transectId: string }[];
  };
}

/** A question to look at: the first belt of a station has neither a count nor "none seen". */
export async function leaveBeltBlank(here: Place, stationId: string): Promise<void> {
  const { revision, sheet } = await here.ask<InBook>(`sheets/${stationId}`);
  const belt = sheet.transects[0]!;
  belt.noneSeen = false;
  sheet.tallies = sheet.tallies.filter((tally) => tally.transectId !== belt.id);
  await sendAs(here, 'Recorder A', { path: `sheets/${stationId}`, body: { base: revision, sheet } });
}
