import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import {
  type PlanProblemCode,
  planProblem,
  planProblemSeverities,
} from '../../planning/size/plan-problem.ts';
import { slotsOf } from './fill.ts';
import { planProblemLines, planSentence, planTemplate } from './plan-words.ts';

const codes = Object.keys(planProblemSeverities) as PlanProblemCode[];
const source = readFileSync(new URL('../../planning/size/plan-problem.ts', import.meta.url), 'utf8');

it('every sentence uses only what its code carries', () => {
  for (const code of codes) {
    const declared = new RegExp(`'${code}': '\\w+', // \\{([^}]*)\\}`).exec(source)?.[1];
    expect(declared, code).toBeDefined();
    const carried = declared!.split(/[,|]/).map((name) => name.trim());
    const made = code === 'plan-number-impossible' ? ['range'] : [];
    for (const slot of slotsOf(planTemplate(code))) expect([...carried, ...made], code).toContain(slot);
  }
});

it('a number out of bounds is named as the officer knows it, with its bounds', () => {
  const problem = planProblem('plan-number-impossible', { what: 'power', value: 1, atLeast: 0.5, below: 1 });
  expect(planSentence(problem)).toBe('the power is 1; it has to be at least 0.5 and below 1');
});

it('what is said of several species is said once', () => {
  const of = (species: string, strata: string) =>
    planProblem('plan-pilot-stratum-none-seen', { survey: 'North 2026', species, strata });
  const lines = planProblemLines([
    of('Sandfish', 'terrace'),
    of('Trochus', 'flat'),
    of('Curryfish', 'terrace'),
  ]);
  expect(lines).toHaveLength(2);
  expect(lines[0]).toContain('Sandfish, Curryfish: none seen in terrace');
});
