import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** What axe-core finds that keeps somebody out, by the rules of WCAG 2.2 AA. */
export async function grave(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    // 2.5.3: who says what stands on a button must be understood.
    .options({ rules: { 'label-content-name-mismatch': { enabled: true } } })
    .analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).slice(0, 3)}`);
}
