import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { schemaFiles } from '../../docs/scripts/schemas.ts';

describe('published JSON Schemas', () => {
  it.each([...schemaFiles()])('docs/schemas/%s is what the code checks (npm run schemas)', (name, text) => {
    const file = new URL(`../../docs/schemas/${name}`, import.meta.url);
    expect(existsSync(file)).toBe(true);
    expect(readFileSync(file, 'utf8')).toBe(text);
  });
});
