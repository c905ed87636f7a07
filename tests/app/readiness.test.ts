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
});
