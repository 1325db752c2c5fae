import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** What is not asked for unless it is named: contrast and links of AAA, and the size of targets. */
const named = [
  'color-contrast-enhanced',
  'identical-links-same-purpose',
  'meta-refresh-no-exceptions',
  'target-size',
];

/** Rules of accessibility that the screen breaks, with where. */
export async function brokenRules(page: Page): Promise<string[]> {
  const rules = Object.fromEntries(named.map((name) => [name, { enabled: true }]));
  const { violations } = await new AxeBuilder({ page }).options({ rules }).analyze();
  return violations.map(({ id, nodes }) => {
    const places = nodes.map((node) => node.target.join(' ')).slice(0, 3);
    return `${id}: ${places.join(' | ')}`;
  });
}
