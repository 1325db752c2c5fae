/** Draws the stations of a survey inside the mapped strata of the book, and keeps the plan with everything it was made of. */

import type { DrawRequest, DrawStratum } from '../../planning/draw/draw-request.ts';
import { drawStations } from '../../planning/draw/draw-stations.ts';
import type { DrawnPlan } from '../../planning/draw/drawn-plan.ts';
import { inclusionUnderSpacing } from '../../planning/draw/inclusion-under-spacing.ts';
import { spatialBalance } from '../../planning/draw/spatial-balance.ts';
import { distanceBetweenM } from '../../planning/ground/geodesic.ts';
import { type PlanProblem, planProblem, stops } from '../../planning/size/plan-problem.ts';
import type { PlanContent } from '../../survey/plan-words.ts';
import type { Plan } from '../../survey/words.ts';
import { codePrefixes } from './code-prefixes.ts';
import { crowdedStrata, groundNotes, thinStrata } from './draw-checks.ts';
import type { PlanDrawRequest } from './draw-request.ts';
import { handPickedStations } from './hand-picked.ts';
import { idleOptions } from './idle-options.ts';
import { type Panel, panelStations } from './panel-stations.ts';
import { type PlanGround, readPlanGround } from './plan-ground.ts';
import { keepPlan, type PlanTools } from './plan-named.ts';
import { protocolNamed } from './protocol-named.ts';
import { type StationsAsked, stationsPerStratum } from './stations-per-stratum.ts';

export interface PlanDrawResult {
  /** Null after a stop. */
  readonly plan: Plan | null;
  readonly written: boolean;
  readonly problems: readonly PlanProblem[];
  readonly dataVersion: string;
}

export async function planDraw(request: PlanDrawRequest, tools: PlanTools): Promise<PlanDrawResult> {
  const made = await makePlan(request, tools);
  const written = made.plan !== null && !request.dryRun;
  if (written) await keepPlan(signed(request, tools), made.plan, reasonOf(request));
  return { ...made, written, dataVersion: await tools.store.dataVersion() };
}

type Made = Pick<PlanDrawResult, 'plan' | 'problems'>;

async function makePlan(request: PlanDrawRequest, tools: PlanTools): Promise<Made> {
  const { store } = tools;
  const nameless = [...namesMissing(request), ...idleOptions(request)];
  if (nameless.length > 0) return { plan: null, problems: nameless };
  const plans = await store.all('plan');
  const before = plans.find(({ name }) => name === request.name);
  if (before !== undefined && request.acceptance === null) {
    const { drawnOn, drawnBy } = before.content;
    return { plan: null, problems: [planProblem('plan-exists', { name: request.name, drawnOn, drawnBy })] };
  }
  const ground = await readPlanGround(store);
  const asked = await stationsPerStratum(store, request, ground);
  if (asked.value === null) return { plan: null, problems: asked.problems };
  const protocol = await protocolNamed(store, request.protocol);
  const crowded = [...protocol.problems, ...crowdedStrata(asked.value, ground, protocol.value)];
  if (stops(crowded)) return { plan: null, problems: crowded };
  const given = await givenStations(request, tools, { asked: asked.value, ground });
  const problems = [...asked.problems, ...crowded, ...given.problems];
  if (given.draw === null) return { plan: null, problems };
  const drawn = drawStations(given.draw);
  problems.push(...drawn.problems);
  if (drawn.value === null) return { plan: null, problems };
  const told = spreadTold(given.draw, drawn.value, request);
  // What is to be decided outlives a draw that is repeated.
  const decision = request.decision ?? before?.content.decision ?? null;
  const made = { tools, ground, asked: asked.value, drawn: drawn.value, told };
  const content = contentOf({ ...made, request: { ...request, decision } });
  const plan = { id: before?.id ?? tools.newId(), name: request.name, content };
  const noted = [
    ...thinStrata(asked.value),
    ...beltsDropped(before),
    ...otherPlans(request, plans),
    ...groundNotes(content, ground),
  ];
  return { plan, problems: [...problems, ...noted] };
}

function namesMissing({ name, survey }: PlanDrawRequest): readonly PlanProblem[] {
  return [
    ...(name.trim() === '' ? [planProblem('plan-name-missing', { what: 'the plan' })] : []),
    ...(survey.trim() === '' ? [planProblem('plan-name-missing', { what: 'the survey (--for)' })] : []),
  ];
}

/** Belts that were laid for the draw that is replaced do not follow its stations: they have to be laid again. */
function beltsDropped(before: Plan | undefined): readonly PlanProblem[] {
  const laid = before?.content.stations.filter(({ belts }) => belts.length > 0) ?? [];
  if (before === undefined || laid.length === 0) return [];
  const stations = laid.length;
  const belts = laid.reduce((sum, one) => sum + one.belts.length, 0);
  return [planProblem('plan-belts-dropped', { plan: before.name, stations, belts })];
}

/** Two plans of one survey may use the same codes for different places. */
function otherPlans({ name, survey }: PlanDrawRequest, plans: readonly Plan[]): readonly PlanProblem[] {
  const others = plans.filter((one) => one.name !== name && (one.content.survey ?? one.name) === survey);
  const names = others.map((one) => one.name).join(', ');
  return names === '' ? [] : [planProblem('plan-survey-has-plan', { survey, plans: names })];
}

/** Fixed and hand-picked stations in their strata, ready for the draw. */
async function givenStations(
  request: PlanDrawRequest,
  { store }: PlanTools,
  { asked, ground }: { readonly asked: StationsAsked; readonly ground: PlanGround },
): Promise<{ readonly draw: DrawRequest | null; readonly problems: readonly PlanProblem[] }> {
  const strata = asked.strata.map(({ name }) => ground.strata.get(name)!);
  const { seed, method, minimumSpacingM } = request;
  const panel =
    request.panel === null ? null : await panelStations(store, request.panel, { asked, ground, seed });
  const picked = handPickedStations(request.handPicked, strata);
  const problems = [...(panel?.problems ?? []), ...picked.problems];
  if (stops(problems) || picked.value === null) return { draw: null, problems };
  const prefixes = codePrefixes(ground.names);
  const fixed: Panel = panel?.value ?? new Map();
  const drawStrata = asked.strata.map(
    ({ name, stations, spares }, h): DrawStratum => ({
      ...{ name, codePrefix: prefixes.get(name)!, ground: strata[h]!.index, stations, spares },
      fixed: fixed.get(name) ?? [],
      handPicked: picked.value!.get(name) ?? [],
    }),
  );
  const draw = { strata: drawStrata, method, seed, minimumSpacingM, distanceM: distanceBetweenM };
  return { draw, problems };
}

type Told = ReadonlyMap<string, Pick<PlanContent['strata'][number], 'balance' | 'spacing'>>;

/** How well the draw is spread, and what the spacing did to the chances. */
function spreadTold(draw: DrawRequest, drawn: DrawnPlan, { seed, redraws }: PlanDrawRequest): Told {
  const effect =
    draw.minimumSpacingM === null || redraws === 0
      ? null
      : inclusionUnderSpacing(draw, { seed, redraws }).value;
  return new Map(
    draw.strata.map(({ name, ground }, h) => {
      const own = drawn.stations.filter(
        (one) => one.stratum === name && one.role === 'planned' && one.selection !== 'hand-picked',
      );
      const balance = spatialBalance(
        ground,
        own.map(({ position }) => position),
        seed,
      );
      const cells = effect?.strata[h];
      const spacing =
        effect === null || cells === undefined
          ? null
          : {
              ...{ lowestRatio: cells.lowestRatio, highestRatio: cells.highestRatio, noise: cells.noise },
              ...{ redraws: effect.redraws, failed: effect.failed },
            };
      return [name, { ...(balance === null ? {} : { balance }), ...(spacing === null ? {} : { spacing }) }];
    }),
  );
}

function contentOf(made: {
  readonly request: PlanDrawRequest;
  readonly tools: PlanTools;
  readonly ground: PlanGround;
  readonly asked: StationsAsked;
  readonly drawn: DrawnPlan;
  readonly told: Told;
}): PlanContent {
  const { request, tools, ground, asked, drawn, told } = made;
  const strata = asked.strata.map(({ name, stations, spares }) => {
    const { leftHa, wholeHa, dropped } = ground.strata.get(name)!.mapped.ground;
    const masks = dropped.filter(({ areaHa }) => areaHa > 0);
    return {
      ...{ name, areaHa: leftHa, maskedHa: Math.max(0, wholeHa - leftHa), stations, spares },
      ...(masks.length === 0 ? {} : { dropped: masks }),
      ...told.get(name),
    };
  });
  return {
    ...{ survey: request.survey, decision: request.decision, protocol: request.protocol },
    ...{ seed: drawn.seed, method: drawn.method, minimumSpacingM: drawn.minimumSpacingM },
    ...{ drawnOn: tools.today, drawnBy: request.acceptance?.who ?? tools.signature.who, strata },
    ...(asked.allocation === null ? {} : { allocation: asked.allocation }),
    ...(request.panel === null ? {} : { revisits: request.panel.survey }),
    stations: drawn.stations.map((station) => ({ ...station, belts: [], shareInside: null })),
    passedOver: [...drawn.passedOver],
    replacements: [],
    laid: null,
  };
}

function signed({ acceptance }: PlanDrawRequest, tools: PlanTools): PlanTools {
  if (acceptance === null) return tools;
  return { ...tools, signature: { ...tools.signature, who: acceptance.who } };
}

function reasonOf({ name, acceptance }: PlanDrawRequest): string {
  return acceptance === null ? `plan ${name}: drawn` : `plan ${name}: drawn again: ${acceptance.why}`;
}
