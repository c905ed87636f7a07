import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/errors.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { readDataPackage } from '../../src/sources/formats/datapackage.ts';
import { MODES, type Mode, tryOnce } from './modes.ts';
import { mutateBytes, mutateText, mutateValue } from './mutate.ts';

const random = (name: string) => createRandom(4).stream(name);

describe('files changed by chance', () => {
  // A taste of each; `npm run fuzz` goes on for as long as one likes.
  it.each(Object.entries(MODES))('%s: an answer or a sentence', async (name, mode) => {
    for (let number = 0; number < 5; number++)
      expect((await tryOnce(mode, random(`${name} ${number}`)))?.fault).toBeUndefined();
  });

  it('are the same for the same seed, and never what they were for long', () => {
    const changes = (seed: string) => {
      const chance = random(seed);
      return [
        mutateText('abcdef', chance),
        mutateBytes(Uint8Array.of(1, 2, 3), chance),
        mutateValue({ a: [1] }, chance),
      ];
    };
    expect(changes('x')).toEqual(changes('x'));
    expect(changes('x')).not.toEqual(changes('y'));
  });
});

describe('a try', () => {
  const outcome = async (mode: Mode) => (await tryOnce(mode, random('one')))?.fault.message;

  it('that is refused in one sentence is no finding, whatever it quotes', async () => {
    expect(
      await outcome(() => {
        throw new InputError('the cell "a\nb" is no number', {}, 'write one');
      }),
    ).toBeUndefined();
  });

  it('that ends in anything else is one, with what was given', async () => {
    expect(
      await outcome(() => {
        throw new TypeError('x is undefined');
      }),
    ).toBe('x is undefined');
    expect(
      await outcome(() => {
        throw new InputError('one\ntwo', {}, 'mend');
      }),
    ).toContain('one\ntwo');
    const found = await tryOnce((_, given) => {
      given('text');
      throw new RangeError('no');
    }, random('one'));
    expect(found?.input).toBe('text');
  });
});

describe('found so', () => {
  it('a data package that is no JSON is refused at its place, without what lies around it', () => {
    expect(() => readDataPackage('{\n "name": "a",\n "resources": [}\n]', 'datapackage.json')).toThrow(
      /^datapackage\.json, line 3, column 16: not valid JSON: [^\n]*$/,
    );
  });
});
