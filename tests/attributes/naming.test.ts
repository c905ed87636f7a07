/** Names of kinds in six languages, by hand from the trade's usage; common practice, no source. */
import { describe, expect, it } from 'vitest';
import { kindNames } from '../../src/attributes/naming/all-names.ts';
import { FACET_WORDS } from '../../src/attributes/naming/facet-words.ts';
import { KIND_LANGUAGES, type KindLanguage } from '../../src/attributes/naming/languages.ts';
import { nameIn, silentIn } from '../../src/attributes/naming/name-in.ts';
import { defaultRegister } from '../../src/attributes/register.ts';
import { composeKinds } from '../../src/fragments/kinds/kinds.ts';
import { makeTable } from '../fragments/make-table.ts';

const register = defaultRegister();
const terms = register.vocabularies.get('structure')!.terms;

function named(language: KindLanguage, structure: string, facets: Readonly<Record<string, string>>): string {
  const term = terms.find(({ id }) => id === structure)!;
  const values = Object.entries(facets).map(([id, value]) => ({
    attribute: register.attributes.get(id)!,
    value,
  }));
  return nameIn(language, term, values);
}

describe('a kind is named', () => {
  const TWINING = { spacingClass: 'open', engagement: 'diagonal', pile: 'present' };

  it.each<[KindLanguage, string]>([
    ['en', 'open diagonal twining with pile'],
    ['de', 'offene diagonale Zwirnbindung mit Flor'],
    ['fr', 'cordé espacé en diagonale à poils'],
    ['it', 'intreccio ritorto aperto in diagonale con pelo'],
    ['es', 'cordado abierto en diagonal con pelo'],
    ['da', 'åben diagonal tvinding med luv'],
  ])('in %s: %s', (language, name) => {
    expect(named(language, 'twined', TWINING)).toBe(name);
  });

  it.each<[KindLanguage, string, Readonly<Record<string, string>>, string]>([
    // The adjective goes with the gender of the noun.
    ['de', 'twill', { face: 'weftFaced' }, 'schussbetonter Köper'],
    ['de', 'plaited', { spacingClass: 'close' }, 'dichtes Geflecht'],
    [
      'de',
      'tabby',
      { face: 'balanced', elementGrouping: 'pairedOne' },
      'ausgeglichene Leinwandbindung mit paarigen Fäden in einem System',
    ],
    ['de', 'twill22', { twillPattern: 'lozenge' }, 'Köper 2/2 mit Rauten'],
    ['fr', 'tabby', { face: 'balanced' }, 'toile équilibrée'],
    ['fr', 'twill22', { twillPattern: 'lozenge' }, 'sergé 2/2 losangé'],
    ['it', 'tabby', { face: 'balanced' }, 'tela bilanciata'],
    ['it', 'twill22', { twillPattern: 'herringbone' }, 'saia 2/2 a spina di pesce'],
    ['es', 'tabby', { face: 'balanced' }, 'tafetán equilibrado'],
    ['es', 'twill', { twillPattern: 'broken' }, 'sarga quebrada'],
    ['da', 'netting', { spacingClass: 'open' }, 'åbent netværk'],
    ['da', 'tabby', { face: 'weftFaced' }, 'lærredsbinding med skudeffekt'],
    // No German gender is guessed: the adjective stands behind.
    ['de', 'hexagonalPlaiting', {}, 'Sechseckgeflecht'],
    ['de', 'weftWrapping', { pile: 'present' }, 'Umschlingungsbindung mit Flor'],
    ['de', 'sewnPlate', { spacingClass: 'open' }, 'genähte Rinde, offen'],
  ])('%s, %s, %o: %s', (language, structure, facets, name) => {
    expect(named(language, structure, facets)).toBe(name);
  });

  it('says what it does not say', () => {
    const pile = register.attributes.get('pile')!;
    expect(silentIn('en', 'twining', pile)).toBe('twining, pile not said');
    expect(silentIn('de', 'Zwirnbindung', pile)).toBe('Zwirnbindung, ohne Angabe: Flor');
    expect(silentIn('fr', 'cordé', pile)).toBe('cordé, sans indication : poils');
  });
});

describe('the words', () => {
  const facets = [...register.attributes.values()].filter(({ facet }) => facet?.of === 'structure');

  it('are there for every facet and value that English has', () => {
    for (const language of KIND_LANGUAGES) {
      if (language === 'en') continue;
      for (const { id, facet } of facets) {
        const known = Object.keys(FACET_WORDS[language][id]?.words ?? {});
        expect([language, id, known.sort()]).toEqual([language, id, Object.keys(facet!.words).sort()]);
      }
    }
  });

  it('tell structures, and values of a facet, apart in every language', () => {
    for (const language of KIND_LANGUAGES) {
      const said = kindNames(register).map(({ what, words }) => `${what}: ${words[language]}`);
      expect(said.filter((one, at) => said.indexOf(one) !== at)).toEqual([]);
    }
  });
});

it('kinds are counted by their English names and shown in the language of the study', () => {
  const finds = makeTable(
    ['present', 'absent', 'present', 'absent'].map((pile) => ({ structure: 'twined', pile, site: 'Holm' })),
    register,
  );
  const { table, register: named } = composeKinds(finds, register, ['structure', 'pile'], 'de');
  const column = table.columns.get('kind');
  expect(column?.kind === 'term' ? column.levels : []).toEqual(['twining with pile', 'twined']);
  const labels = new Map(named.vocabularies.get('kind')?.terms.map(({ id, label }) => [id, label]));
  expect(labels.get('twining with pile')).toBe('Zwirnbindung mit Flor');
  expect(labels.get('twined')).toBe('Zwirnbindung');
});
