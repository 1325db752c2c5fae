import type { Position } from '../../survey/map-area.ts';
import { type BeltsInside, beltsInside } from './belts-inside.ts';
import { angleBetweenDeg, fullCircle } from './geodesic.ts';
import { type BeltSeries, bearingsFromTurns, type LaidBelt, layBelts } from './lay-belts.ts';

export interface BearingChoice {
  /** True bearing of the first belt. */
  readonly bearingDeg: number;
  /** Turn before every further belt, positive clockwise; 0 for a straight series. */
  readonly turnDeg: number;
  readonly share: number;
  readonly insideM: number;
}

export interface BearingSearch {
  readonly best: BearingChoice & { readonly belts: readonly LaidBelt[]; readonly inside: BeltsInside };
  /** The best of other directions, at least 20 degrees away from the best and from each other. */
  readonly runnersUp: readonly BearingChoice[];
  /** Degrees from the best bearing to the nearest one tried that does worse, 180 when none does: room for drift. */
  readonly slackDeg: number;
  /** Whether some bearing keeps every belt on the ground from end to end. */
  readonly fits: boolean;
  /** False when the start itself is off the ground. */
  readonly startsInside: boolean;
}

export interface BearingQuestion {
  readonly start: Position;
  readonly series: BeltSeries;
  readonly contains: (position: Position) => boolean;
  /** Along the contour, where it is known: of bearings equally good the nearest to it wins. */
  readonly preferredBearingDeg?: number;
  /** Turns between belts that may be tried, in degrees, the most welcome first. Straight only unless said. */
  readonly turnsDeg?: readonly number[];
  /** Turns that somebody fixed before the second belt and each further one, where the contour turns there. */
  readonly bendsDeg?: readonly number[];
  /** Width of the belts: middle and both edges must be on the ground. The line alone where it is not given. */
  readonly widthM?: number | null;
}

const coarseDeg = 5;
const coarseStepM = 2;
const fineDeg = 1;
const fineStepM = 0.5;
const apartDeg = 20;
const runnersUpKept = 3;

/**
 * The bearing that keeps a whole series of belts inside its stratum and off the masks.
 *
 * First every 5 degrees, looked at in steps of 2 m; then every degree around the best of them, in steps of half a
 * metre. Of bearings with the same share the one nearest `preferredBearingDeg` wins, else the one with most room to
 * both sides. A way inside narrower than 5 degrees can be missed. Nothing is drawn by chance: the same question has the same answer.
 * Cost: about 100 layings for each turn tried.
 */
export function searchBearing(question: BearingQuestion): BearingSearch {
  const coarse = (question.turnsDeg ?? [0]).flatMap((turnDeg) => around(question, turnDeg));
  const leader = choose(coarse, question.preferredBearingDeg);
  const close = closerLook(question, leader);
  // A leader that does not fit may be beaten between the coarse bearings of another direction.
  const others = close.some(({ share }) => share === 1) ? [] : apartFrom(leader, coarse);
  const fine = [...close, ...others.flatMap((other) => closerLook(question, other))];
  const best = choose(fine, question.preferredBearingDeg);
  const belts = layBelts(question.start, question.series, bearingsOf(question, best));
  const sameTurn = [...coarse, ...fine].filter(({ turnDeg }) => turnDeg === best.turnDeg);
  return {
    best: { ...best, belts, inside: inside(question, belts, fineStepM) },
    runnersUp: apartFrom(best, [...fine, ...coarse]),
    slackDeg: slackOf(best, sameTurn),
    fits: best.share === 1,
    startsInside: question.contains(question.start),
  };
}

function around(question: BearingQuestion, turnDeg: number): BearingChoice[] {
  return Array.from({ length: 360 / coarseDeg }, (_, i) =>
    tryBearing(question, { bearingDeg: i * coarseDeg, turnDeg }, coarseStepM),
  );
}

function closerLook(question: BearingQuestion, { bearingDeg, turnDeg }: BearingChoice): BearingChoice[] {
  // The leader itself first, so that it stays the choice where all are equal.
  return offsetsDeg.map((offsetDeg) =>
    tryBearing(question, { bearingDeg: fullCircle(bearingDeg + offsetDeg), turnDeg }, fineStepM),
  );
}

const offsetsDeg = [0, -1, 1, -2, 2, -3, 3, -4, 4].map((steps) => steps * fineDeg);

function tryBearing(
  question: BearingQuestion,
  { bearingDeg, turnDeg }: { readonly bearingDeg: number; readonly turnDeg: number },
  stepM: number,
): BearingChoice {
  const belts = layBelts(question.start, question.series, bearingsOf(question, { bearingDeg, turnDeg }));
  const { share, insideM } = inside(question, belts, stepM);
  return { bearingDeg, turnDeg, share, insideM };
}

function bearingsOf(
  { series, bendsDeg }: BearingQuestion,
  choice: { readonly bearingDeg: number; readonly turnDeg: number },
): number[] {
  if (choice.turnDeg === 0 && bendsDeg === undefined) return [choice.bearingDeg];
  const turnsDeg = Array.from(
    { length: series.transects - 1 },
    (_, i) => choice.turnDeg + (bendsDeg?.[i] ?? 0),
  );
  return bearingsFromTurns(choice.bearingDeg, turnsDeg);
}

function inside(question: BearingQuestion, belts: readonly LaidBelt[], stepM: number): BeltsInside {
  const { contains, widthM = null } = question;
  return beltsInside(belts, question.series.lengthM, { contains, stepM, widthM });
}

/** Share first, then the order of the turns, then the preferred bearing or the room to both sides. */
function choose(choices: readonly BearingChoice[], preferredDeg: number | undefined): BearingChoice {
  const most = Math.max(...choices.map((choice) => choice.share));
  const turn = choices.find((choice) => choice.share === most)!.turnDeg;
  const equal = choices.filter((choice) => choice.share === most && choice.turnDeg === turn);
  const worth = (choice: BearingChoice) =>
    preferredDeg === undefined
      ? -slackOf(
          choice,
          choices.filter(({ turnDeg }) => turnDeg === turn),
        )
      : angleBetweenDeg(choice.bearingDeg, preferredDeg);
  return equal.reduce((best, choice) => (worth(choice) < worth(best) ? choice : best));
}

/** Degrees to the nearest bearing that does worse; 180 when none does. */
function slackOf(one: BearingChoice, others: readonly BearingChoice[]): number {
  const worse = others.filter((other) => other.share < one.share);
  return Math.min(180, ...worse.map((other) => angleBetweenDeg(other.bearingDeg, one.bearingDeg)));
}

/** The best of the other directions. */
function apartFrom(best: BearingChoice, candidates: readonly BearingChoice[]): BearingChoice[] {
  const kept: BearingChoice[] = [];
  for (const candidate of candidates.toSorted((a, b) => b.share - a.share)) {
    const isApart = [best, ...kept].every(
      (other) => angleBetweenDeg(other.bearingDeg, candidate.bearingDeg) >= apartDeg,
    );
    if (isApart && kept.length < runnersUpKept) kept.push(candidate);
  }
  return kept;
}
