import {
  type Planned,
  type PlanProblem,
  planned,
  planProblem,
  refused,
  stops,
} from '../size/plan-problem.ts';
import { bareCode, checkDraw, type DrawRequest, type DrawStratum } from './draw-request.ts';
import type { DrawnPlan, DrawnStation } from './drawn-plan.ts';
import { mostTries, type NextPosition, orderedPositions } from './ordered-positions.ts';
import { pivotalPositions } from './pivotal-positions.ts';
import { type SpacedStations, spacedStations } from './spaced-stations.ts';
import { stratumRandom } from './stratum-seed.ts';

/**
 * Which stations to visit: well-spread random positions in each stratum, spares in order, fixed and chosen ones beside.
 *
 * The same request and seed give the same stations; another seed gives others; each stratum draws by its own chance.
 * Fixed stations (a panel) count among the stations of their stratum and new ones fill up; hand-picked ones are added,
 * marked, and take no part in the design. With a minimum spacing a position nearer than that to any station of the
 * plan is passed over and listed; that lowers the chances near others and near the edge: see `inclusionUnderSpacing`.
 * Refuses, with the numbers, ground that cannot be found and a spacing that leaves too few.
 */
export function drawStations(request: DrawRequest): Planned<DrawnPlan> {
  const problems = checkDraw(request);
  if (stops(problems)) return refused(problems);
  const given = request.strata.flatMap(givenStations);
  const spaced = spacedStations(given, request);
  const taken = new Set(given.map(({ code }) => bareCode(code)));
  const lists: NextPosition[] = [];
  for (const stratum of request.strata) {
    const list = listFor(stratum, request);
    if (typeof list !== 'function') return refused([...problems, list]);
    lists.push(list);
  }
  // All stations before any spare, so that no spare of one stratum takes the room of a station of the next.
  const stations = request.strata.map((stratum, h) =>
    take(stratum, { role: 'planned', next: lists[h]!, spaced, codes: taken }),
  );
  const short = stations.flatMap((one) => one.problems);
  if (stops(short)) return refused([...problems, ...short]);
  const spares = request.strata.map((stratum, h) =>
    take(stratum, { role: 'spare', next: lists[h]!, spaced, codes: taken }),
  );
  const rows = request.strata.flatMap((stratum, h) => {
    const own = givenStations(stratum);
    const fixed = own.filter((station) => station.selection === 'fixed');
    const handPicked = own.filter((station) => station.selection === 'hand-picked');
    return [...fixed, ...stations[h]!.taken, ...handPicked, ...spares[h]!.taken];
  });
  const { seed, method, minimumSpacingM } = request;
  const plan = { seed, method, minimumSpacingM, stations: rows, replacements: [] };
  return planned({ ...plan, passedOver: spaced.passedOver() }, [
    ...problems,
    ...spaced.nearPairs(),
    ...spares.flatMap((one) => one.problems),
  ]);
}

function givenStations({ name, fixed, handPicked }: DrawStratum): readonly DrawnStation[] {
  const rest = { stratum: name, role: 'planned', replaces: null } as const;
  return [
    ...fixed.map((one) => ({ ...one, ...rest, selection: 'fixed' as const })),
    ...handPicked.map((one) => ({ ...one, ...rest, selection: 'hand-picked' as const })),
  ];
}

function listFor(stratum: DrawStratum, request: DrawRequest): NextPosition | PlanProblem {
  const random = stratumRandom(request.seed, stratum.name);
  const weight = request.weight ?? null;
  if (request.method === 'acceptance') return orderedPositions(stratum.ground, random, weight);
  const stations = newStations(stratum);
  // Without a new station there is nothing to fight for, and a panel may need spares all the same.
  const wanted = { stations, spares: stratum.spares, candidates: request.candidates ?? 2000, weight };
  if (stations + stratum.spares === 0) return () => null;
  return pivotalPositions(stratum, wanted, random);
}

function newStations({ stations, fixed }: DrawStratum): number {
  return stations - fixed.length;
}

interface Taken {
  readonly taken: readonly DrawnStation[];
  readonly problems: readonly PlanProblem[];
}

function take(
  stratum: DrawStratum,
  from: {
    readonly role: 'planned' | 'spare';
    readonly next: NextPosition;
    readonly spaced: SpacedStations;
    /** Codes of given stations, of any stratum. */
    readonly codes: ReadonlySet<string>;
  },
): Taken {
  const { role, next, spaced, codes } = from;
  const wanted = role === 'planned' ? newStations(stratum) : stratum.spares;
  const taken: DrawnStation[] = [];
  let passed = 0;
  while (taken.length < wanted && passed < mostPassedOver) {
    const position = next();
    if (position === null) break;
    const code = codeFor(stratum, { role, taken: taken.length, codes });
    const station = {
      code,
      stratum: stratum.name,
      position,
      selection: 'random',
      role,
      replaces: null,
    } as const;
    if (spaced.add(station)) {
      taken.push(station);
      passed = 0;
    } else passed++;
  }
  if (taken.length === wanted) return { taken, problems: [] };
  return { taken, problems: [shortage(stratum, { role, wanted, found: taken.length, passed, spaced })] };
}

/** So many positions in a row too near to others: the ground is full. */
const mostPassedOver = 2000;

/** A code stands for one place of the plan: a drawn station never bears that of a given one, in whatever stratum it lies. */
function codeFor(
  stratum: DrawStratum,
  at: {
    readonly role: 'planned' | 'spare';
    readonly taken: number;
    readonly codes: ReadonlySet<string>;
  },
): string {
  const { role, taken, codes } = at;
  const digits = String(stratum.stations + stratum.spares).length;
  const first = role === 'planned' ? stratum.fixed.length : stratum.stations;
  const code = `${stratum.codePrefix ?? stratum.name}-${String(first + taken + 1).padStart(Math.max(2, digits), '0')}`;
  let free = code;
  while (codes.has(bareCode(free))) free = `${free}-new`;
  return free;
}

function shortage(
  stratum: DrawStratum,
  met: {
    readonly role: 'planned' | 'spare';
    readonly wanted: number;
    readonly found: number;
    readonly passed: number;
    readonly spaced: SpacedStations;
  },
): PlanProblem {
  const { role, wanted, found, passed, spaced } = met;
  const common = { stratum: stratum.name, wanted, found };
  if (role === 'spare') return planProblem('plan-spares-short', common);
  if (spaced.spacingM === null || passed === 0) {
    return planProblem('plan-ground-not-found', { ...common, tries: mostTries });
  }
  return planProblem('plan-spacing-leaves-too-few', {
    ...common,
    spacingM: spaced.spacingM,
    tried: passed,
  });
}
