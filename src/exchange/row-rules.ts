/** Tests of somebody else's rows: which concern a table, and which are left out under a name. */

import { cellOf, type PositionOf } from './column-source.ts';
import type { Ask, Condition, LeaveOut } from './mapping-schema.ts';
import type { AskRule, LeaveOutRule } from './read-sheet.ts';

/** A rule with its name. A rule about repeats remembers what it has seen: of equal rows the first is kept. */
export function leaveOutRule(
  rule: LeaveOut,
  missing: readonly string[],
  positionOf: PositionOf,
): LeaveOutRule {
  if (!('repeats' in rule)) return { rule: rule.rule, applies: testOf(rule, missing, positionOf) };
  const seen = new Set<string>();
  const takes = rule.repeats.map((column) => cellOf(column, missing, positionOf));
  return {
    rule: rule.rule,
    applies(cells) {
      const key = takes.map((take) => take(cells)).join('\u0000');
      if (seen.has(key)) return true;
      seen.add(key);
      return false;
    },
  };
}

/** A row to be read and looked at; what is shown is the tested cell unless the rule names another. */
export function askRule(rule: Ask, missing: readonly string[], positionOf: PositionOf): AskRule {
  const test = testOf(rule, missing, positionOf);
  const shown = cellOf(rule.show ?? rule.column, [], positionOf);
  return { rule: rule.rule, asks: (cells) => (test(cells) ? shown(cells) : null) };
}

type Test = (cells: readonly string[]) => boolean;

/** A test that holds when all conditions do. */
export function allOf(
  conditions: readonly Condition[],
  missing: readonly string[],
  positionOf: PositionOf,
): Test {
  const tests = conditions.map((condition) => testOf(condition, missing, positionOf));
  return (cells) => tests.every((test) => test(cells));
}

/** `equals` and `matches` look at the text as written; `blank` knows the texts that mean nothing was written. */
function testOf(condition: Condition, missing: readonly string[], positionOf: PositionOf): Test {
  const written = cellOf(condition.column, [], positionOf);
  if (condition.equals !== undefined) {
    const wanted = new Set(condition.equals);
    return (cells) => wanted.has(written(cells));
  }
  if (condition.matches !== undefined) {
    const pattern = new RegExp(condition.matches, 'u');
    return (cells) => pattern.test(written(cells));
  }
  const known = cellOf(condition.column, missing, positionOf);
  return (cells) => (known(cells) === '') === condition.blank;
}
