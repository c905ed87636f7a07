import { describe, expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import { benchForTests } from './bench.ts';
import { type Desk, saved } from './workbench.ts';

let desk: Desk;
benchForTests(async (opened) => {
  desk = await opened.open();
  desk.page.setDefaultTimeout(120_000);
  await desk.demo();
  await desk.go('Placement');
  await desk.page.getByRole('radio', { name: 'a whole site' }).click();
});

describe('placing a whole site', () => {
  it('says in one page whom it is like, as figure, table, sentence, cautions and working', async () => {
    const { page } = desk;
    await page.getByRole('heading', { name: 'Where does this site sit in its region?' }).waitFor();
    await page.locator('.say .sentence').waitFor();
    await expect
      .poll(() => page.locator('.say .sentence').textContent())
      .toMatch(/^In kind of fabric Pellunar Wreck is most like Ysketh Pans/);
    await page.locator('.see .drawing .main-svg').first().waitFor();
    for (const figure of ['On the map of the others', 'What sets it apart'])
      await page.getByRole('radio', { name: figure }).click();
    await expect.poll(() => page.locator('.cautions li').count()).toBeGreaterThan(1);
    for (const table of [
      'Whom Pellunar Wreck is like',
      'Items at home elsewhere',
      'Nearer in space or in time',
    ])
      await page.locator('.more').getByRole('radio', { name: table }).click();
    expect(desk.errors).toEqual([]);
  });

  it('takes another site, bounds it to its region, and keeps both in the study that is taken away', async () => {
    const { page } = desk;
    await page.getByRole('button', { name: 'Another site' }).click();
    await page.getByRole('button', { name: /The site$/ }).click();
    await page.getByRole('option', { name: 'Ysketh Pans' }).click();
    await page.locator('.check', { hasText: 'only its own region' }).click();
    await page
      .locator('.say .sentence', { hasText: 'Within region Strand, in kind of fabric Ysketh Pans' })
      .waitFor();
    await page.getByText(/Set aside: .*Region is not Strand/).waitFor();
    await expect
      .poll(() => page.getByRole('list', { name: 'Sites that are kept' }).locator('li').count())
      .toBe(2);
    await desk.go('Take away');
    const study = await saved(page, page.getByRole('button', { name: /^Save the study/ }));
    const kept = checkStudy(JSON.parse(study.text), study.name).analyses as { kind: string; site?: string }[];
    const standings = kept.filter(({ kind }) => kind === 'standing');
    expect(standings.map(({ site }) => site)).toEqual(['Pellunar Wreck', 'Ysketh Pans']);
    expect(desk.errors).toEqual([]);
  });

  it('can be stopped while it runs', async () => {
    const { page } = desk;
    await desk.go('Placement');
    await page.getByRole('radio', { name: 'a whole site' }).click();
    await page.locator('.see').getByRole('button', { name: 'Stop' }).click();
    await page.getByText('Stopped; what you see is the answer before.').waitFor();
    await page.getByRole('button', { name: 'Compute it' }).click();
    await page.locator('.say .sentence').waitFor();
    expect(desk.errors).toEqual([]);
  });
});
