import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** Rules of accessibility that the screen breaks, contrast of AAA and size of targets among them, with where. */
export async function brokenRules(page: Page): Promise<string[]> {
  const rules = { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: true } };
  const { violations } = await new AxeBuilder({ page }).options({ rules }).analyze();
  return violations.map(({ id, nodes }) => {
    const places = nodes.map((node) => node.target.join(' ')).slice(0, 3);
    return `${id}: ${places.join(' | ')}`;
  });
}
