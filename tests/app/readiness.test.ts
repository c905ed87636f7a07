import { describe, expect, it } from 'vitest';
import { benchForTests } from './bench.ts';

/** Invented finds: a landing spelled twice, and numbers that name the object of several rows. */
const TABLE =
  'Cat. no.,Item no.,Site,Structure\n1,7,Drommavel Landing,tabby\n2,7,Drommavel Landing,tabby\n3,8,Drommavel ldg,twill\n';

const bench = benchForTests();

describe('whether the data are ready', () => {
  it('is said before any verdict; what counts as one and which names are one is answered with clicks', async () => {
    const desk = await bench.open(1440);
    const { page } = desk;
    await page
      .locator('input[type=file]')
      .setInputFiles([{ name: 'finds.csv', mimeType: 'text/csv', buffer: Buffer.from(TABLE) }]);
    const panel = page.getByRole('region', { name: 'Are the data ready?' });
    await panel.getByText('numbers in the tables seem to name 2 objects').waitFor();
    await page.getByText('All 3 fragments', { exact: true }).waitFor();
    await panel.getByRole('button', { name: 'Yes, these numbers name the objects' }).click();
    await panel.getByText('3 fragments of 2 items, as confirmed.').waitFor();
    await page.getByText('All 3 fragments of 2 items').waitFor();
    await panel.getByText('one may abbreviate the other').waitFor();
    await panel.getByRole('button', { name: 'Both are Drommavel Landing' }).click();
    await panel.getByText('one may abbreviate the other').waitFor({ state: 'detached' });
    expect(desk.errors).toEqual([]);
  });

  it('offers the columns that may name the object, and takes one with a click', async () => {
    const text =
      'Cat. no.,Bundle,Site,Structure\n1,a,Ottmere,tabby\n2,b,Ottmere,twill\n3,a,Ottmere,tabby\n4,b,Ottmere,twill\n';
    const desk = await bench.open(1440);
    const { page } = desk;
    await page
      .locator('input[type=file]')
      .setInputFiles([{ name: 'bundles.csv', mimeType: 'text/csv', buffer: Buffer.from(text) }]);
    const panel = page.getByRole('region', { name: 'Are the data ready?' });
    await panel.getByText('“Bundle”, for it: 2 names in 4 rows').waitFor();
    // Nothing is taken unasked: the rows count, and nothing can be confirmed before a column is chosen.
    await page.getByText('All 4 fragments', { exact: true }).waitFor();
    await expect
      .poll(() => panel.getByRole('button', { name: 'Confirm the columns chosen' }).isDisabled())
      .toBe(true);
    await panel.getByRole('radio', { name: 'Bundle' }).click();
    await panel.getByLabel('What one is called').fill('khipu');
    await panel.getByRole('button', { name: '“Bundle” names the object' }).click();
    await panel.getByText('4 fragments of 2 khipus, as confirmed.').waitFor();
    await page.getByText('All 4 fragments of 2 khipus').waitFor();
    expect(desk.errors).toEqual([]);
  });
});
