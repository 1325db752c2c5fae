/** Which station a photo was taken at, by the clock: a suggestion for the hand that matches them, never more. */

/** Of a station, as the slate says it. */
export interface VisitTime {
  /** ISO day. */
  readonly date: string;
  /** HH:MM. */
  readonly timeStart: string | null;
  readonly timeEnd: string | null;
}

/**
 * Minutes from a visit to a photo, 0 for one taken while the divers were at the station, so that the nearest comes first.
 *
 * Null where one of the two has no time. Both are clocks on the wall; a visit that ends before it starts went over midnight.
 */
export function minutesFromVisit(takenAt: string | null, visit: VisitTime): number | null {
  const { date, timeStart, timeEnd } = visit;
  const known = timeStart ?? timeEnd;
  if (takenAt === null || known === null) return null;
  const from = minutesAt(`${date}T${known}`);
  const last = minutesAt(`${date}T${timeEnd ?? known}`);
  const to = last < from ? last + minutesADay : last;
  const taken = minutesAt(takenAt);
  if (taken < from) return from - taken;
  return taken > to ? taken - to : 0;
}

/** Stations of the day of a photo, nearest time first, those without a time after them; then all others, by code. */
export function suggestStations<Visit extends VisitTime & { readonly code: string }>(
  takenAt: string | null,
  stations: readonly Visit[],
): { readonly thatDay: readonly Visit[]; readonly others: readonly Visit[] } {
  const byCode = stations.toSorted((a, b) => a.code.localeCompare(b.code, 'en', { numeric: true }));
  const isThatDay = ({ date }: Visit) => takenAt?.startsWith(date) === true;
  const distance = (visit: Visit) => minutesFromVisit(takenAt, visit) ?? Number.MAX_SAFE_INTEGER;
  return {
    thatDay: byCode.filter(isThatDay).toSorted((a, b) => distance(a) - distance(b)),
    others: byCode.filter((one) => !isThatDay(one)),
  };
}

/** Photos that may belong to a station, nearest time first, those without a time last. */
export function nearestPhotos<Photo extends { readonly takenAt: string | null; readonly name: string }>(
  photos: readonly Photo[],
  visit: VisitTime,
): readonly Photo[] {
  // A station without a time still has its day: noon stands for it.
  const timed = visit.timeStart === null && visit.timeEnd === null ? { ...visit, timeStart: '12:00' } : visit;
  const distance = ({ takenAt }: Photo) => minutesFromVisit(takenAt, timed) ?? Number.MAX_SAFE_INTEGER;
  return photos.toSorted((a, b) => distance(a) - distance(b) || (a.name < b.name ? -1 : 1));
}

const minutesADay = 24 * 60;

/** On one line of minutes: wall clocks of one place are compared with each other, whatever their zone. */
function minutesAt(wallClock: string): number {
  return Date.parse(`${wallClock}Z`) / 60_000;
}
