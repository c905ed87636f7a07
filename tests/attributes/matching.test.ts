import { describe, expect, it } from 'vitest';
import { headerUnit, matchAttribute, matchTerm, splitHeader } from '../../src/attributes/matching.ts';
import { defaultRegister, extendRegister } from '../../src/attributes/register.ts';

const register = defaultRegister();
const vocabulary = (id: string) => register.vocabularies.get(id)!;

/** Headers as specialists write them: common practice, no source; the words are those of the trade in six languages. */
// biome-ignore format: one attribute a line
const HEADERS: readonly (readonly [attribute: string, unit: string | undefined, ...headers: string[]])[] = [
  ['site', undefined, 'Site', 'SITE', 'Fundort', 'Fundstelle', 'Sito', 'Yacimiento', 'lokalitet', 'Site name'],
  ['fragment', undefined, 'Fragment', 'fragment no.', 'Fragment-Nr.', 'Fragmentnummer', 'Frag. no.'],
  ['catalogueNumber', undefined, 'Inv.-Nr.', 'Inv. no.', 'Cat. no.', 'Kat.-Nr.', 'N° inv.', 'Catalogue number'],
  ['structure', undefined, 'Structure', 'Bindung', 'Technik', 'Armure', 'Armatura', 'Ligamento', 'Weave', 'vævning', 'technique'],
  ['fibre', undefined, 'Fibre', 'Fiber', 'Faser', 'Material', 'Fibra', 'Fasermaterial'],
  ['period', undefined, 'Period', 'Periode', 'Période', 'Periodo', 'Zeitstellung'],
  ['density1', 'per cm', 'Warp/cm', 'warps per cm', 'Kette/cm', 'Kettfäden/cm', 'Fili/cm ordito', 'hilos/cm urdimbre', 'Trend/cm', 'Fd/cm Kette', 'fils de chaîne/cm', 'Density system 1 (per cm)'],
  ['density2', 'per cm', 'Weft/cm', 'wefts per cm', 'Schuss/cm', 'Schussfäden/cm', 'fili/cm trama', 'hilos/cm trama', 'islæt/cm', 'fils de trame/cm', 'rows/cm', 'Reihen/cm', 'rangs/cm'],
  ['density2', 'per 5 cm', 'Reihen pro 5 cm', 'Rows per 5 cm', 'rows (5 cm)'],
  ['rowSpacing', 'mm', 'Row spacing (mm)', 'Reihenabstand [mm]', 'Reihenabstand, mm', 'espacement des rangs (mm)', 'interasse file (mm)', 'separación de filas (mm)', 'rækkeafstand (mm)', 'Row spacing mm'],
  ['rowSpacing', 'cm', 'Reihenabstand (cm)', 'row spacing in cm', 'spacing (cm)'],
  ['diameter1', 'mm', 'Warp diameter (mm)', 'Fadendurchmesser Kette (mm)', 'Dm Kette (mm)', 'diam. chaîne (mm)', 'diametro ordito (mm)'],
  ['diameter2', 'mm', 'Weft diameter (mm)', 'Fadendurchmesser Schuss (mm)', 'Dm Schuss (mm)', 'diam. trame (mm)', 'diametro trama (mm)'],
  ['twist1', undefined, 'Warp twist', 'Drehung Kette', 'Twist system 1', 'torsion chaîne', 'torsione ordito', 'torsión urdimbre'],
  ['twist2', undefined, 'Weft twist', 'Drehung Schuss', 'Twist system 2', 'torsion trame', 'torsione trama', 'torsión trama'],
  ['length', 'cm', 'Length (cm)', 'Länge (cm)', 'Longueur (cm)', 'Lunghezza (cm)', 'Longitud (cm)', 'Længde (cm)'],
  ['width', 'mm', 'Width (mm)', 'Breite (mm)', 'Largeur (mm)', 'Larghezza (mm)', 'Anchura (mm)', 'Bredde (mm)'],
  ['preservation', undefined, 'Preservation', 'Erhaltung', 'Conservation', 'Conservazione', 'Conservación'],
  ['conservationTreatment', undefined, 'Conservation treatment', 'Konservierung', 'traitement de conservation', 'restauro', 'konservering', 'tratamiento de conservación'],
  ['repairTime', undefined, 'When repaired', 'age of repair', 'Zeit der Reparatur'],
  ['remarks', undefined, 'Remarks', 'Notes', 'Bemerkungen', 'Remarques', 'Note', 'Observaciones', 'Bemærkninger'],
  ['meshGauge', 'mm', 'Mesh gauge, bar (mm)', 'Maschenschenkel (mm)', 'Mesh gauge (mm)'],
  ['meshStretched', 'mm', 'stretched mesh (mm)', 'maille étirée (mm)'],
  ['meshOpening', 'mm', 'luz de malla (mm)', 'Maschenöffnung (mm)'],
  ['rowGap', 'mm', 'space between rows (mm)', 'espacio entre filas (mm)', 'espace entre les rangs (mm)'],
  ['rowSlant', undefined, 'Slant of rows'],
  ['pile', undefined, 'Pile', 'Flor', 'pile present'],
  ['item', undefined, 'Item', 'Item no.'],
];

describe('headers of six languages are taken as they stand', () => {
  const cases = HEADERS.flatMap(([attribute, unit, ...headers]) =>
    headers.map((header) => ({ header, attribute, unit })),
  );

  it('there are more than a hundred', () => {
    expect(cases.length).toBeGreaterThan(110);
  });

  it.each(cases)('$header is $attribute', ({ header, attribute, unit }) => {
    expect(matchAttribute(header, register)).toMatchObject({ kind: 'exact', id: attribute });
    if (unit !== undefined)
      expect(headerUnit(header, register.attributes.get(attribute)!)?.replace(/^\//, 'per ')).toBe(unit);
  });

  it.each(['FUNDORT', 'fundort', ' Fundort ', 'Fund-Ort'])(
    '%s matches whatever its case, space or hyphen',
    (header) => {
      expect(matchAttribute(header, register)).toMatchObject({ id: 'site' });
    },
  );
});

describe('a near header is only suggested, with a reason', () => {
  it.each([
    ['Reihenabsatnd (mm)', 'rowSpacing'],
    ['Row spacng', 'rowSpacing'],
    ['Fundrot', 'site'],
  ])('%s', (header, attribute) => {
    const match = matchAttribute(header, register);
    expect(match).toMatchObject({ kind: 'suggested', id: attribute });
    expect((match as { reason: string }).reason).toMatch(/\S/);
  });

  it.each(['xyzzy', '', '   ', '__proto__', 'constructor', '123'])('%j is nothing', (header) => {
    expect(matchAttribute(header, register).kind).not.toBe('exact');
  });

  it('words of a length beside a unit of another kind are not taken', () => {
    expect(matchAttribute('Row spacing (g)', register).kind).toBe('suggested');
  });
});

/** Term words of trade, in the languages of the vocabularies: common practice, no source. */
// biome-ignore format: one term a line
const TERMS: readonly (readonly [vocabulary: string, term: string, ...words: string[]])[] = [
  ['structure', 'tabby', 'tabby', 'plain weave', 'Leinwandbindung', 'LEINWANDBINDIG', 'armure toile', 'toile', 'armatura tela', 'tafetán', 'tafetan', 'lærredsbinding', 'toskaft'],
  ['structure', 'twill22', '2/2 twill', 'Gleichgratköper', 'Gleichgratkoper', 'sergé 2 lie 2', 'saia 2/2', 'ligesidet kiper'],
  ['structure', 'twill', 'twill', 'Köper', 'sergé', 'saia', 'kiper', 'kypert'],
  ['structure', 'repp', 'repp', 'Rips', 'reps', 'canneté', 'canalé'],
  ['structure', 'basketWeave', 'basket weave', 'panama', 'hopsack', 'Panamabindung'],
  ['structure', 'twined', 'twined', 'twining', 'Zwirnbindung', 'Zwirngeflecht', 'étoffe cordée', 'a struttura ritorta', 'cordado', 'tvinding'],
  ['structure', 'openTwining', 'open twining', 'spaced twining', 'Zwirnbindung mit Abstand', 'cordé espacé', 'cordado abierto', 'åben tvinding'],
  ['structure', 'closeTwining', 'close twining', 'compact twining', 'dichte Zwirnbindung', 'cordé serré', 'cordado compacto'],
  ['structure', 'tuftedTwining', 'twining with pile', 'Vliesgeflecht', 'cordé à mèches'],
  ['structure', 'knottedNetting', 'knotted netting', 'geknotetes Netz', 'filet noué', 'rete annodata', 'red anudada', 'knyttet net'],
  ['structure', 'netting', 'netting', 'Netz', 'filet', 'rete', 'redes'],
  ['structure', 'coiled', 'coiled', 'Spiralwulst', 'vannerie spiralée', 'intreccio a spirale', 'espiral cosida'],
  ['structure', 'needleBound', 'needle-bound', 'nalbinding', 'nålebinding', 'Nadelbindung'],
  ['structure', 'sprang', 'sprang', 'Sprang'],
  ['structure', 'cordage', 'cord', 'Schnur', 'ficelle', 'corda', 'cordelería', 'snor'],
  ['structure', 'tabletWoven', 'tablet weave', 'Brettchengewebe', 'tessitura a tavolette', 'brikvævning'],
  ['fibre', 'limeBast', 'lime bast', 'Tilia', 'Tilia sp.', 'Lindenbast', 'tilleul', 'tiglio', 'linden'],
  ['fibre', 'willowBast', 'willow bast', 'Weidenbast', 'liber de saule', 'pilebast'],
  ['fibre', 'treeBast', 'tree bast', 'Gehölzbast', 'indet. tree bast'],
  ['fibre', 'bastFibre', 'liber indét.', 'fibre libérienne'],
  ['fibre', 'flax', 'flax', 'linen', 'Flachs', 'Lein', 'lin', 'lino', 'hør', 'Linum usitatissimum'],
  ['fibre', 'nettle', 'nettle', 'Brennnessel', 'ortie', 'ortica', 'ortiga', 'nælde'],
  ['fibre', 'wool', 'wool', 'Wolle', 'Schafwolle', 'laine', 'lana', 'uld', 'ull'],
  ['fibre', 'hemp', 'hemp', 'Hanf', 'chanvre', 'canapa', 'cáñamo', 'hamp'],
  ['fibre', 'cotton', 'cotton', 'Baumwolle', 'coton', 'cotone', 'algodón', 'bomuld'],
  ['fibre', 'esparto', 'esparto', 'Espartogras', 'sparte', 'sparto'],
  ['fibre', 'silk', 'silk', 'Seide', 'soie', 'seta', 'seda', 'silke'],
  ['fibre', 'plantFibre', 'indet. plant', 'pflanzlich', 'végétal'],
  ['twist', 'none', 'none', 'I', 'untwisted', 'worked straight', 'ungedreht', 'sans torsion', 'sin torsión'],
  ['twist', 'S', 'S', 's', 'S-Drehung', 'torsion S'],
  ['preservation', 'charred', 'charred', 'carbonised', 'verkohlt', 'carbonisé', 'carbonizzato', 'forkullet'],
  ['preservation', 'waterlogged', 'waterlogged', 'wassergesättigt', 'imbibito'],
  ['preservation', 'mineralised', 'mineralised', 'mineralisiert', 'minéralisé', 'mineralizado'],
  ['repairTime', 'inUse', 'ancient repair', 'alte Reparatur', 'réparation ancienne', 'riparazione antica', 'reparación antigua'],
  ['repairTime', 'afterFinding', 'modern', 'moderne Reparatur', 'réparation moderne', 'moderne reparasjon'],
  ['treatment', 'freezeDried', 'freeze-dried', 'gefriergetrocknet', 'lyophilisé', 'liofilizzato', 'frysetørret'],
  ['treatment', 'untreated', 'not conserved', 'unbehandelt', 'non traité', 'ubehandlet'],
  ['spacingClass', 'close', 'compact', 'dicht', 'serré', 'rows touch', 'tæt'],
];

describe('terms of six languages are taken as they stand', () => {
  const cases = TERMS.flatMap(([id, term, ...words]) => words.map((word) => ({ id, term, word })));

  it('there are more than a hundred and fifty', () => {
    expect(cases.length).toBeGreaterThan(150);
  });

  it.each(cases)('$word is $term', ({ id, term, word }) => {
    expect(matchTerm(word, vocabulary(id))).toMatchObject({ kind: 'exact', id: term });
  });
});

describe('words that mean more than one thing are asked about', () => {
  it.each([
    ['structure', 'sarga', 'twill', 'osier'],
    ['structure', '2/1 tabby', 'halfBasket', '2/1 twill'],
    ['structure', 'wicker', 'basketry', 'twining'],
    ['structure', 'mat', 'matting', 'use'],
    ['structure', 'firskaft', 'twill22', '3/1'],
    ['structure', 'Geflecht', 'basketry', 'twining'],
    ['fibre', 'willow', 'willowBast', 'rods'],
    ['fibre', 'bulrush', 'clubrush', 'reedmace'],
    ['fibre', 'hierba', 'grass', 'any herb'],
    ['processing', 'spun', 'draftSpun', 'spliced'],
    ['preservation', 'Torf', 'bog', 'fens'],
    ['edge', 'orlo', 'hem', 'seam'],
    ['fibre', 'lime', 'limeBast', 'citrus'],
    ['fibre', 'bast', 'bastFibre', 'phloem'],
    ['fibre', 'lind', 'limeBast', 'Norwegian'],
  ])('%s: %s', (id, word, candidate, why) => {
    const match = matchTerm(word, vocabulary(id));
    expect(match).toMatchObject({ kind: 'suggested', id: candidate });
    expect((match as { reason: string }).reason).toContain(why);
  });

  it('Norwegian and French "lin" is flax, Danish "lind" is not', () => {
    expect(matchTerm('lin', vocabulary('fibre'))).toMatchObject({ kind: 'exact', id: 'flax' });
    expect(matchTerm('lind', vocabulary('fibre'))).not.toMatchObject({ kind: 'exact' });
  });

  it('a slip of spelling is only suggested', () => {
    expect(matchTerm('Leinwandbinding', vocabulary('structure'))).toMatchObject({
      kind: 'suggested',
      id: 'tabby',
    });
  });
});

it('a header that may number an object or name it is asked about', () => {
  expect(matchAttribute('Objekt', register)).toMatchObject({ kind: 'suggested', id: 'item' });
});

describe('a study adds attributes and terms', () => {
  const whorl = {
    id: 'whorlMass',
    label: 'Whorl mass',
    block: 'find',
    scale: 'ratio',
    unit: 'g',
    source: 'test',
  } as const;

  it('and its words win over the defaults', () => {
    const own = extendRegister(register, { attributes: [{ ...whorl, synonyms: { en: ['weave'] } }] });
    expect(matchAttribute('Weave', own)).toMatchObject({ kind: 'exact', id: 'whorlMass' });
    expect(matchAttribute('Whorl mass (g)', own)).toMatchObject({ kind: 'exact', id: 'whorlMass' });
    expect(register.attributes.has('whorlMass')).toBe(false);
  });

  it('with a parent for each term', () => {
    const own = extendRegister(register, {
      terms: [
        { vocabulary: 'fibre', id: 'hazelBast', parent: 'treeBast', label: 'hazel bast', source: 'test' },
      ],
    });
    expect(matchTerm('Hazel bast', own.vocabularies.get('fibre')!)).toMatchObject({
      kind: 'exact',
      id: 'hazelBast',
    });
  });

  it.each([
    [
      { attributes: [{ ...whorl, id: 'site' }] },
      'attributes: the attribute "site" exists already; give it another id, or use the attribute "site" as it is.',
    ],
    [
      { terms: [{ vocabulary: 'fibre', id: 'flax', label: 'flax', source: 't' }] },
      'terms: the term "flax" exists already in the vocabulary "fibre"; give it another id, or use the term as it is.',
    ],
    [
      { terms: [{ vocabulary: 'fibre', id: 'x', parent: 'y', label: 'x', source: 't' }] },
      'terms.x: the parent "y" is not a term of the vocabulary "fibre"; name an existing term as the parent, or leave the parent out to add a root.',
    ],
    [
      { attributes: [{ ...whorl, scale: 'ordinal' as const }] },
      'attributes.whorlMass: the ordinal attribute "whorlMass" names fewer than two levels; list its grades under "levels", lowest first.',
    ],
  ])('and is told what does not fit: %#', (additions, message) => {
    expect(() => extendRegister(register, additions)).toThrow(message);
  });
});

it('a header gives up its unit wherever it stands', () => {
  expect(splitHeader('Fäden/cm Kette')).toEqual({ name: 'Fäden Kette', unit: 'per cm' });
  expect(splitHeader('Reihenabstand [mm]')).toEqual({ name: 'Reihenabstand', unit: 'mm' });
  expect(splitHeader('Remarks (see p. 3)')).toEqual({ name: 'Remarks (see p. 3)' });
});

/** Common practice, no source: how the thickness of a thread is headed. */
describe('a diameter beside a length', () => {
  // biome-ignore format: one language a line
  it.each([
    'Yarn Ø (mm)', 'Yarn Ø', 'thread Ø (mm)', 'Thread Ø mm', 'Ø of yarn (mm)', 'yarn diam. (mm)', 'Yarn dia. (mm)', 'Thread thickness, mm', 'Strand Ø (mm)', 'Cord Ø (cm)', 'Yarn ⌀ (mm)', 'Yarn ∅ (mm)', 'Ø (mm)',
    'Fadendurchmesser (mm)', 'Faden-Ø (mm)', 'Faden-Dm. (mm)', 'Durchmesser Garn (mm)', 'Garn Ø [mm]', 'Garndicke (mm)',
    'Ø fil (mm)', 'Ø des fils (mm)', 'Ø filo (mm)', 'Ø hilo (mm)', 'tråd-Ø (mm)',
    'Ø warp (mm)', 'dia. of warp (mm)', 'Yarn Ø warp (mm)', 'Yarn ⌀ warp (mm)',
  ])('%s is suggested as that of the first system', (header) => {
    expect(matchAttribute(header, register)).toMatchObject({ kind: 'suggested', id: 'diameter1' });
  });

  it.each(['Ø weft (mm)', 'dia. of weft (mm)', 'yarn Ø weft [mm]', 'Thickness of yarn, weft (mm)'])(
    '%s is suggested as that of the second system',
    (header) => {
      expect(matchAttribute(header, register)).toMatchObject({ kind: 'suggested', id: 'diameter2' });
    },
  );

  it('a kind is not suggested for what was measured', () => {
    for (const header of ['Yarn girth (mm)', 'twist Ø (mm)', 'hole Ø (mm)']) {
      const match = matchAttribute(header, register);
      const unit = match.kind === 'none' ? 'mm' : register.attributes.get(match.id)?.unit;
      expect(unit, header).toBe('mm');
    }
  });
});

describe('a unit beside a near wording', () => {
  it('speaks for the attribute that is measured in it', () => {
    expect(matchAttribute('Fil de tramme/cm', register)).toMatchObject({ kind: 'suggested', id: 'density2' });
    expect(matchAttribute('Chaîne Ø/cm', register)).toMatchObject({ kind: 'suggested', id: 'density1' });
    expect(matchAttribute('Ficelle/cm', register).kind).toBe('none');
    expect(matchAttribute('yarn weft/cm', register)).toMatchObject({ kind: 'suggested', id: 'density2' });
  });

  it('"in" as the last word is asked about, never taken for inches', () => {
    const match = matchAttribute('Length in', register);
    expect(match).toMatchObject({ kind: 'suggested', id: 'length' });
    expect(match.kind === 'suggested' && match.reason).toContain('in inches');
    expect(headerUnit('Length in', register.attributes.get('length')!)).toBe('in');
    expect(headerUnit('Woven in', register.attributes.get('structure')!)).toBeUndefined();
  });
});
