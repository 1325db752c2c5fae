/** Where the screens are: #/sheets/SURVEY/STATION. The address is the only memory of it, so that "back" works. */

export const rooms = ['plan', 'day', 'sheets', 'questions', 'answers', 'papers'] as const;
export type RoomName = (typeof rooms)[number];

export interface Route {
  readonly room: RoomName | 'start';
  readonly surveyId: string | null;
  /** What follows the survey: a station, a date. */
  readonly rest: readonly string[];
}

export const place: { route: Route } = $state({ route: routeOf(location.hash) });

addEventListener('hashchange', () => {
  place.route = routeOf(location.hash);
});

export function hrefOf(room: RoomName | 'start', surveyId: string | null = null, ...rest: string[]): string {
  const parts = room === 'start' ? [] : [room, ...(surveyId === null ? [] : [surveyId, ...rest])];
  return `#/${parts.map(encodeURIComponent).join('/')}`;
}

export function go(href: string): void {
  location.hash = href;
}

function routeOf(hash: string): Route {
  const [name, surveyId, ...rest] = hash.replace(/^#\/?/, '').split('/').map(decoded);
  const room = rooms.find((one) => one === name) ?? 'start';
  return { room, surveyId: surveyId || null, rest: rest.filter((part) => part !== '') };
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
