/** Remarks on answers, sorted for reading: what many answers have in common is said once, and beside an answer stands what is its own. */

export interface Remark {
  readonly text: string;
  /** Names a belt or a station that is in neither the count nor the area. */
  readonly isLeftOut: boolean;
}

export interface AnswerRemarks {
  readonly place: string;
  readonly remarks: readonly Remark[];
}

/** What every answer of these places has, and not every answer there is. */
export interface PlacesRemarks {
  readonly places: readonly string[];
  readonly remarks: readonly Remark[];
}

export interface SharedRemarks {
  /** What every answer has. */
  readonly ofAll: readonly Remark[];
  readonly ofPlaces: readonly PlacesRemarks[];
  /** In the order of the answers: what neither of the two above says of it. */
  readonly own: readonly (readonly Remark[])[];
}

/**
 * Nothing is lost and nothing is said of an answer that it does not say itself: its own remarks, those of its place and
 * those of all are together what it had. An answer that stands alone, or alone in its place, shares nothing.
 */
export function sharedRemarks(answers: readonly AnswerRemarks[]): SharedRemarks {
  const placesOf = wholePlaces(answers);
  const ofAll: Remark[] = [];
  const byPlaces = new Map<string, { places: readonly string[]; remarks: Remark[] }>();
  const told = new Map<string, readonly string[] | 'all'>();
  for (const { remark, saidBy } of said(answers)) {
    const isOfAll = saidBy.size === answers.length && answers.length > 1;
    const places = isOfAll ? [] : placesOf(saidBy);
    told.set(remark.text, isOfAll ? 'all' : places);
    if (isOfAll) ofAll.push(remark);
    else if (places.length > 0) groupOf(places, byPlaces).push(remark);
  }
  const isOwn = (place: string, { text }: Remark) => {
    const where = told.get(text)!;
    return where !== 'all' && !where.includes(place);
  };
  const own = answers.map(({ place, remarks }) => once(remarks).filter((one) => isOwn(place, one)));
  return { ofAll, ofPlaces: [...byPlaces.values()], own };
}

/** Each remark once, with the answers that have it, in the order of the first. */
function said(answers: readonly AnswerRemarks[]) {
  const all = new Map<string, { readonly remark: Remark; readonly saidBy: Set<AnswerRemarks> }>();
  for (const answer of answers) {
    for (const remark of answer.remarks) {
      const known = all.get(remark.text) ?? { remark, saidBy: new Set() };
      all.set(remark.text, known);
      known.saidBy.add(answer);
    }
  }
  return all.values();
}

/** The places of more than one answer of which every answer is among those given. */
function wholePlaces(answers: readonly AnswerRemarks[]) {
  const shown = countBy(answers);
  return (some: ReadonlySet<AnswerRemarks>): readonly string[] =>
    [...countBy(some)].filter(([place, n]) => n > 1 && n === shown.get(place)).map(([place]) => place);
}

function countBy(answers: Iterable<AnswerRemarks>): Map<string, number> {
  const counted = new Map<string, number>();
  for (const { place } of answers) counted.set(place, (counted.get(place) ?? 0) + 1);
  return counted;
}

function groupOf(
  places: readonly string[],
  groups: Map<string, { places: readonly string[]; remarks: Remark[] }>,
): Remark[] {
  const key = places.join('\u0000');
  const group = groups.get(key) ?? { places, remarks: [] };
  groups.set(key, group);
  return group.remarks;
}

function once(remarks: readonly Remark[]): readonly Remark[] {
  return remarks.filter(({ text }, i) => remarks.findIndex((one) => one.text === text) === i);
}
