import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoBytes, demoText, MESS, TRUE_ITEMS, TRUTH } from './truth.ts';

describe('the invented coast', () => {
  it('has at least five sites in three phases, some 400 fragments of some 250 items', () => {
    expect(new Set(TRUTH.map(({ site }) => site)).size).toBeGreaterThanOrEqual(5);
    expect(new Set(TRUTH.map(({ phase }) => phase))).toEqual(new Set(['Early', 'Middle', 'Late']));
    expect(TRUTH.length).toBeGreaterThan(380);
    expect(TRUTH.length).toBeLessThan(420);
    expect(TRUE_ITEMS.length).toBeGreaterThan(240);
    expect(TRUE_ITEMS.length).toBeLessThan(260);
    expect([MESS.fragments, MESS.items]).toEqual([TRUTH.length, TRUE_ITEMS.length]);
  });

  it('keeps the planted gap in row spacing open: nothing twined between 6 and 10 mm', () => {
    const spacings = TRUE_ITEMS.filter(({ rowSpacing }) => rowSpacing !== '').map(({ kind, rowSpacing }) => ({
      open: kind === 'open twining',
      spacing: Number(rowSpacing),
    }));
    expect(spacings.length).toBeGreaterThan(100);
    expect(spacings.every(({ open, spacing }) => (open ? spacing >= 10 : spacing <= 6))).toBe(true);
  });

  it('mixes two traditions on the wreck and nowhere else', () => {
    const traditions = (site: string) =>
      new Set(TRUE_ITEMS.filter((item) => item.site === site).map(({ tradition }) => tradition));
    const mixed = [...new Set(TRUTH.map(({ site }) => site))].filter((site) => traditions(site).size > 1);
    expect(mixed).toEqual(['Pellunar Wreck']);
  });

  it('lost what the setting does not keep', () => {
    expect(MESS.lost).toEqual([
      { site: 'Drommavel Landing', kind: 'weft-faced repp', items: 12 },
      { site: 'Tazzimbe Gallery', kind: 'open twining', items: 4 },
    ]);
    const survives = (site: string, kind: string) =>
      TRUTH.some((fragment) => fragment.site === site && fragment.kind === kind);
    expect(MESS.lost.filter(({ site, kind }) => survives(site, kind))).toEqual([]);
  });
});

describe('datasets/scripts/make-demo.ts', () => {
  let folder: string;

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'thrum-demo-'));
    const root = new URL('../../', import.meta.url);
    execFileSync(process.execPath, ['--import', 'tsx', 'datasets/scripts/make-demo.ts', folder], {
      cwd: root,
    });
  }, 60_000);

  it('writes the committed files again, byte for byte', () => {
    const written = readdirSync(folder).sort();
    expect(written).toContain('truth.csv');
    expect(written.length).toBe(10);
    for (const file of written) {
      expect(Buffer.compare(readFileSync(join(folder, file)), demoBytes(file)), file).toBe(0);
    }
  });
});

describe('datasets/demo/datapackage.json', () => {
  interface Resource {
    readonly path: string;
    readonly bytes: number;
    readonly hash: string;
    readonly schema: { readonly fields: readonly { readonly name: string }[] };
  }
  const { resources } = JSON.parse(demoText('datapackage.json')) as { resources: readonly Resource[] };

  it.each(resources)('states size and sum of $path', ({ path, bytes, hash }) => {
    const content = demoBytes(path);
    expect(content.length).toBe(bytes);
    expect(`sha256:${createHash('sha256').update(content).digest('hex')}`).toBe(hash);
  });

  it('names every field once, as Table Schema asks', () => {
    for (const { path, schema } of resources) {
      const names = schema.fields.map(({ name }) => name);
      expect(new Set(names).size, path).toBe(names.length);
    }
  });
});
