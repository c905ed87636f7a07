import { AxeBuilder } from '@axe-core/playwright';
import { describe, expect, it } from 'vitest';
import { benchForTests } from './bench.ts';
import { type Desk, saved } from './workbench.ts';

let desk: Desk;
benchForTests(async (opened) => {
  desk = await opened.open();
  await desk.demo();
  await desk.go('Type rules');
});

const fits = () => desk.page.getByRole('region', { name: 'Who fits' });
const said = () => desk.page.getByRole('region', { name: 'What can be said' });

describe('Type rules', () => {
  it('opens the demo’s claim with its counts, its density and its verdict', async () => {
    await fits().getByText('of 115 that the claim speaks of').waitFor();
    await said().getByText('Supported: readings of row spacing').waitFor();
    await desk.page.locator('.drawing .main-svg').first().waitFor();
    expect(desk.errors).toEqual([]);
  });

  it('moves a cut with the keyboard: records cross it at once, and the rule follows', async () => {
    const { page } = desk;
    const slider = page.getByRole('slider', { name: 'Cut of Row spacing' });
    await slider.focus();
    await page.keyboard.press('End');
    await fits()
      .locator('div', { hasText: /^Rows closer than 8 mm1\d\d$/ })
      .waitFor();
    await page.keyboard.press('Home');
    await fits()
      .locator('div', { hasText: /^Rows closer than 8 mm\d$/ })
      .waitFor();
    await page.getByRole('button', { name: /^Undo/ }).click();
    await page.getByRole('button', { name: /^Undo/ }).click();
    await fits()
      .locator('div', { hasText: /^Rows closer than 8 mm56$/ })
      .waitFor();
  });

  it('says in one sentence what is wrong with a rule, and takes it back', async () => {
    const { page } = desk;
    const open = page.getByRole('region', { name: /^Type 2/ });
    await open.getByLabel('below').fill('3');
    await page.keyboard.press('Enter');
    await fits()
      .getByRole('alert')
      .getByText(/no record can be of the type "open": rowSpacing at least 8 and below 3/)
      .waitFor();
    await page.getByRole('button', { name: /^Undo/ }).click();
    await fits().getByText('of 115 that the claim speaks of').waitFor();
  });

  it('edits a nested rule as groups: any of these, none of these, with counts at once', async () => {
    const { page } = desk;
    const close = page.getByRole('region', { name: /^Type 1/ });
    await close.getByRole('button', { name: /^a group … \(of/ }).click();
    await close.getByRole('button', { name: /group 2: how its parts are joined/ }).click();
    await page.getByRole('option', { name: 'none of these holds' }).click();
    const inner = close.getByRole('group', { name: /group 2$/ });
    await inner.getByRole('button', { name: /condition 1: attribute/ }).click();
    await page.getByRole('option', { name: 'Structure', exact: true }).click();
    await inner.getByRole('button', { name: /condition 1: add a term/ }).click();
    await page.getByRole('option').first().click();
    await fits()
      .locator('div', { hasText: /^Rows closer than 8 mm\d+$/ })
      .waitFor();
    const { text } = await saved(page, page.getByRole('button', { name: 'Save the rule file' }));
    const [first] = JSON.parse(text).types;
    expect(first.when.all[1].not).toMatchObject({ attribute: 'structure', in: [expect.any(String)] });
    for (let step = 0; step < 4; step++) await page.getByRole('button', { name: /^Undo/ }).click();
    await fits()
      .locator('div', { hasText: /^Rows closer than 8 mm56$/ })
      .waitFor();
  });

  it('saves the rule file, and sets rivals side by side', async () => {
    const { page } = desk;
    const { name, text } = await saved(page, page.getByRole('button', { name: 'Save the rule file' }));
    expect(name).toBe('twining.types.json');
    expect(JSON.parse(text).types).toHaveLength(2);
    await page.getByRole('button', { name: 'Keep these rules as a rival' }).click();
    await page
      .getByRole('region', { name: 'Rivals side by side' })
      .getByText('(as it was)')
      .first()
      .waitFor();
  });

  it('is free of accessibility faults that a machine can find', async () => {
    const { violations } = await new AxeBuilder({ page: desk.page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag22aa'])
      .analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    expect(desk.errors).toEqual([]);
  });
});
