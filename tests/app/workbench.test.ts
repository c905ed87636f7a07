import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import { freshFolder, thrum } from '../cli/thrum.ts';
import { benchForTests } from './bench.ts';
import { type Desk, saved, savedBytes } from './workbench.ts';

const SCREENS = ['Sources', 'Kinship', 'Placement', 'Take away'];

const bench = benchForTests();

describe('the workbench, first page', () => {
  it('says where the data stay, and asks nobody else for anything', async () => {
    const desk = await bench.open();
    await desk.page.getByText('Everything is computed on this machine.').waitFor();
    await desk.demo();
    await desk.go('Kinship');
    await desk.page.locator('.drawing .main-svg').first().waitFor();
    expect(desk.foreign).toEqual([]);
    expect(desk.errors).toEqual([]);
    await desk.close();
  });

  it('waits on every other screen with a sentence that says what would help', async () => {
    const desk = await bench.open();
    for (const screen of SCREENS.slice(1)) {
      await desk.go(screen);
      await desk.page.getByText('bring tables first').waitFor();
    }
    await desk.page.getByRole('button', { name: 'Go to Sources' }).click();
    await desk.page.getByRole('button', { name: 'Choose tables' }).waitFor();
    await desk.close();
  });

  it('refuses a file that is neither a table nor a study in one sentence', async () => {
    const desk = await bench.open();
    await desk.page
      .locator('input[type=file]')
      .setInputFiles({ name: 'notes.json', mimeType: 'application/json', buffer: Buffer.from('{"a":1}') });
    await desk.page.getByRole('alert').getByText('notes.json: not a table or a study').waitFor();
    await desk.close();
  });
});

describe('Sources', () => {
  it('reads every table of the demo and accounts for every row', async () => {
    const desk = await bench.open();
    await desk.demo();
    const { page } = desk;
    const names = await page.locator('.source-list .source-name').allTextContents();
    expect(names).toHaveLength(6);
    for (const name of names) {
      await page.locator('.source-way', { hasText: name }).click();
      await page.getByText(`The file: ${name}`).waitFor();
      const said = await page.getByText(/rows? read =/).textContent();
      const [read, kept, aside] = (said ?? '').match(/\d+/g)!.map(Number);
      expect(read).toBe(kept! + aside!);
      expect(kept).toBeGreaterThan(0);
    }
    await desk.close();
  });

  it('maps an unknown column by one answer, takes it back, and saves the profile', async () => {
    const desk = await bench.open();
    const { page } = desk;
    const csv =
      'Find no.;Site;Weave;Row spacing (mm);Xq\n1;Kell;tabby;3,5;1,2\n2;Kell;twill;4;0,9\n3;Orm;tabby;ca. 5;1,1\n';
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'own.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) });
    const question = page.locator('.questions li', { hasText: '“Xq” is not known' });
    await question.waitFor();
    await question.getByRole('combobox').fill('Element diameter');
    await page.getByRole('option', { name: /Element diameter, system 1/ }).click();
    await question.waitFor({ state: 'detached' });
    const row = page.locator('.columns li', { hasText: 'Xq' });
    await row.getByText('Element diameter, system 1').first().waitFor();
    const profile = await saved(page, page.getByRole('button', { name: 'Save the profile' }));
    expect(profile.name).toBe('own.profile.json');
    expect(JSON.parse(profile.text).columns).toContainEqual(
      expect.objectContaining({ header: 'Xq', attribute: 'diameter1' }),
    );
    await page.getByRole('button', { name: /^Undo: “Xq” is/ }).click();
    await question.waitFor();
    expect(desk.errors).toEqual([]);
    await desk.close();
  });

  it('narrows the ledger by kind and leads from an entry to its cell', async () => {
    const desk = await bench.open();
    await desk.demo();
    const { page } = desk;
    await page.getByLabel('With the words').fill('approximate');
    const line = page.locator('.ledger-line').first();
    await line.waitFor();
    const raw = await line.locator('.quoted').textContent();
    await line.getByRole('button').click();
    await page.locator('.raw-cell.chosen', { hasText: raw ?? '' }).waitFor();
    await desk.close();
  });
});

describe('what holds on all screens', () => {
  it('keeps the selection and the unit from screen to screen', async () => {
    const desk = await bench.open();
    await desk.demo();
    const { page } = desk;
    await page.getByRole('radio', { name: 'a fragment' }).click();
    await page.getByRole('button', { name: 'Narrow' }).click();
    await page.getByRole('button', { name: /Only fragments whose/ }).click();
    await page.getByRole('option', { name: 'Site', exact: true }).click();
    await page.locator('.kinds .check').first().click();
    await page.getByRole('button', { name: 'Keep only these' }).click();
    await page.locator('.chip', { hasText: 'Site is' }).waitFor();
    for (const screen of SCREENS) {
      await desk.go(screen);
      await page.locator('.chip', { hasText: 'Site is' }).waitFor();
      await expect.poll(() => page.getByRole('radio', { name: 'a fragment' }).isChecked()).toBe(true);
    }
    await desk.close();
  });

  it('is still there after the page is loaded again, until it is forgotten', async () => {
    const desk = await bench.open();
    await desk.demo();
    const { page } = desk;
    await page.waitForTimeout(800);
    await page.reload();
    await page.locator('.raw-grid .raw-cell').first().waitFor();
    await page.getByRole('button', { name: 'Close and forget everything on this machine' }).click();
    await page.getByRole('button', { name: 'Choose tables' }).waitFor();
    await page.waitForTimeout(300);
    await page.reload();
    await page.getByRole('button', { name: 'Choose tables' }).waitFor();
    await desk.close();
  });
});

describe('Kinship', () => {
  let desk: Desk;
  beforeAll(async () => {
    desk = await bench.open();
    await desk.demo();
    await desk.go('Kinship');
  });
  afterAll(() => desk?.close());

  it('shows groups as a figure, as a table and in a sentence, and a weight changes them', async () => {
    const { page } = desk;
    await page.locator('.drawing .main-svg').first().waitFor();
    const sentence = page.locator('.say .sentence').first();
    await sentence.getByText(/fall into \w+ groups/).waitFor();
    const before = await sentence.textContent();
    const slider = page.getByRole('slider', { name: 'Structure' });
    await slider.focus();
    for (let press = 0; press < 15; press++) await slider.press('ArrowLeft');
    await page.waitForFunction(
      (text) => document.querySelector('.say .sentence')?.textContent !== text,
      before,
    );
    // The figure of the quick look gives way to that of the answer, and with it what was chosen of it.
    await page.getByText('A quick look, not yet tested').waitFor({ state: 'hidden' });
    await page.getByRole('radio', { name: 'Table', exact: true }).click();
    await page.locator('.see table tbody tr').first().waitFor();
    expect(desk.errors).toEqual([]);
  });

  it('a cell of the heat map is picked as a pair, framed in it, and marked in the other figures', async () => {
    const { page } = desk;
    // With another weight other records are compared: what is picked before the new answer may not be in it.
    await page.getByText('A quick look, not yet tested').waitFor({ state: 'hidden' });
    await page.getByRole('radio', { name: 'Figure', exact: true }).click();
    await page.getByRole('radio', { name: 'All against all' }).click();
    const plot = page.locator('.drawing .nsewdrag[data-subplot="x2y"]');
    await plot.waitFor();
    const box = (await plot.boundingBox())!;
    await page.mouse.click(box.x + box.width * 0.7, box.y + box.height * 0.3);
    await page.locator('.trace .pair-head').waitFor();
    await page.getByText('2 records picked').waitFor();
    await page.waitForFunction(() => document.querySelectorAll('.drawing .shapelayer path').length === 4);
    await page.getByRole('radio', { name: 'How well each fits' }).click();
    await page.waitForFunction(() => {
      const bars = [...document.querySelectorAll<SVGElement>('.drawing .barlayer .point path')];
      return bars.filter((bar) => Number(getComputedStyle(bar).opacity) === 1).length === 2;
    });
    await page.getByRole('button', { name: 'Let go' }).click();
  });

  it('leads from a name to its cells and the line of its file, and says why two are alike', async () => {
    const { page } = desk;
    await page.getByRole('radio', { name: 'Membership', exact: true }).click();
    const names = page.locator('.more .pick');
    await names.nth(0).click();
    await page.locator('.trace .record .table.cells tbody tr').first().waitFor();
    await page
      .locator('.trace .record')
      .getByRole('button', { name: /\.csv, row \d+/ })
      .first()
      .click();
    await page.locator('.trace .source-line dt').first().waitFor();
    await names.nth(1).click({ modifiers: ['Shift'] });
    await page.getByText('0 = alike in all that both record').waitFor();
  });
});

describe('Placement', () => {
  let desk: Desk;
  beforeAll(async () => {
    desk = await bench.open();
    await desk.demo();
    await desk.go('Placement');
  });
  afterAll(() => desk?.close());

  it('sets the find of the demo among its comparanda', async () => {
    const { page } = desk;
    await page.locator('.cards .card').first().waitFor();
    await page.locator('.say .sentence').waitFor();
    await page.locator('.cut-label').first().waitFor();
    expect(desk.errors).toEqual([]);
  });

  it('draws the structure as it is described, and says that it is no find', async () => {
    const { page } = desk;
    const picture = page.getByRole('img', {
      name: /^Schema of open Z-slanting diagonal twining with pile\./,
    });
    await picture.waitFor();
    expect(
      await picture.evaluate((image: HTMLImageElement) => image.complete && image.naturalWidth > 0),
    ).toBe(true);
    await page.getByText(/^open Z-slanting diagonal twining with pile: a schema, not the find\./).waitFor();
  });

  it('reads a measurement as it is typed, unit included', async () => {
    const { page } = desk;
    const field = page.getByLabel(/^Element diameter, system 1/);
    await field.fill('c. 0.32 cm');
    await page.getByText(/read as 2\.88 to 3\.52 mm, about/).waitFor();
    // What the attribute counts is another field, and named otherwise.
    await expect
      .poll(() => page.getByLabel('Weight of element diameter, system 1', { exact: true }).inputValue())
      .toBe('1');
  });
});

describe('Take away', () => {
  let desk: Desk;
  beforeAll(async () => {
    desk = await bench.open();
    await desk.demo();
    await desk.go('Take away');
  });
  afterAll(() => desk?.close());

  it('hands over one archive, from which the terminal computes the very same bytes', async () => {
    const { page } = desk;
    const all = await savedBytes(page, page.getByRole('button', { name: /^Save everything/ }));
    const entries = unzipSync(all.bytes);
    expect(Object.keys(entries)).toContain('out/report.html');
    const folder = freshFolder();
    for (const [name, bytes] of Object.entries(entries)) {
      mkdirSync(dirname(join(folder, name)), { recursive: true });
      writeFileSync(join(folder, name), bytes);
    }
    const { status, err } = await thrum('run', join(folder, 'study.json'), '--out', join(folder, 'again'));
    expect(status, err).toBe(0);
    const written = Object.keys(entries).filter((name) => name.startsWith('out/'));
    expect(written.length).toBeGreaterThan(50);
    for (const name of written) {
      const again = readFileSync(join(folder, name.replace(/^out/, 'again')));
      expect(again.equals(Buffer.from(entries[name]!)), name).toBe(true);
    }
  });

  it('hands over a study that it opens again, and a normalised table', async () => {
    const { page } = desk;
    const study = await saved(page, page.getByRole('button', { name: /^Save the study/ }));
    expect(checkStudy(JSON.parse(study.text), study.name).sources).toHaveLength(6);
    const table = await saved(page, page.getByRole('button', { name: /^Save the normalised table/ }));
    expect(table.text.split('\r\n').length).toBeGreaterThan(300);
  });
});

describe('in a narrow window', () => {
  it.each([900, 600])('nothing is cut off at %s px', async (width) => {
    const desk = await bench.open(width);
    await desk.demo();
    for (const screen of SCREENS) {
      await desk.go(screen);
      await desk.page.waitForTimeout(400);
      const over = await desk.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(over, screen).toBeLessThanOrEqual(0);
    }
    await desk.close();
  });
});
