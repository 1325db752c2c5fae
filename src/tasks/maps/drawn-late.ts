import type { Problem } from '../../survey/message.ts';
import { problemOf } from '../../survey/problem-of.ts';
import type { MapAreaRecord, Station, Stratum, Survey } from '../../survey/words.ts';

/**
 * Borders drawn or moved after a station in them was worked: strata that follow the animals make every answer by
 * stratum look better than it is. One note per survey, for strata that were not frozen before its first station.
 */
export function drawnLate(book: {
  readonly before: readonly MapAreaRecord[];
  readonly after: readonly MapAreaRecord[];
  readonly strata: readonly Stratum[];
  readonly stations: readonly Station[];
  readonly surveys: readonly Survey[];
  readonly today: string;
}): readonly Problem[] {
  const ids = new Map(book.strata.map(({ name, id }) => [name, id]));
  const moved = book.after.filter((now) => now.role === 'stratum' && isMoved(now, book.before));
  return book.surveys.flatMap((survey) => {
    const stations = book.stations.filter(({ surveyId }) => surveyId === survey.id);
    const firstDate = stations.map(({ date }) => date).sort()[0];
    if (firstDate === undefined) return [];
    const late = moved.filter(
      ({ name, content }) =>
        (content.frozenOn ?? book.today) > firstDate &&
        stations.some(({ stratumId }) => stratumId === ids.get(name)),
    );
    if (late.length === 0) return [];
    const areas = late.map(({ name }) => name).join(', ');
    const parameters = { areas, today: book.today, survey: survey.name, firstDate };
    return [problemOf('strata-drawn-late', {}, { parameters })];
  });
}

function isMoved(now: MapAreaRecord, before: readonly MapAreaRecord[]): boolean {
  const old = before.find(({ id }) => id === now.id);
  return old === undefined || old.content.area !== now.content.area;
}
