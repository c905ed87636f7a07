import type { Drawing } from '../../src/attributes/drawing/drawing.ts';
import type { Facets } from '../../src/attributes/drawing/facets.ts';
import { structureDrawing } from '../../src/attributes/drawing/structure-drawing.ts';
import { drawingSvg } from '../../src/attributes/drawing/svg.ts';
import { kindNames } from '../../src/attributes/naming/all-names.ts';
import { KIND_LANGUAGES, LANGUAGE_NAMES } from '../../src/attributes/naming/languages.ts';
import { defaultRegister } from '../../src/attributes/register.ts';

/** File name -> structure and facets, in the order of the page. */
const SHOWN: Readonly<
  Record<string, readonly (readonly [file: string, structure: string, facets: Facets])[]>
> = {
  Woven: [
    ['tabby', 'tabby', {}],
    ['tabby-open', 'tabby', { spacingClass: 'open' }],
    ['tabby-weft-faced', 'tabby', { face: 'weftFaced' }],
    ['tabby-warp-faced', 'tabby', { face: 'warpFaced' }],
    ['tabby-half-basket', 'tabby', { elementGrouping: 'pairedOne' }],
    ['tabby-basket', 'tabby', { elementGrouping: 'pairedBoth' }],
    ['tabby-pile', 'tabby', { pile: 'present' }],
    ['twill-2-1', 'twill21', {}],
    ['twill-2-2', 'twill22', {}],
    ['twill-2-2-pointed', 'twill22', { twillPattern: 'pointed' }],
    ['twill-2-2-herringbone', 'twill22', { twillPattern: 'herringbone' }],
    ['twill-2-2-diamond', 'twill22', { twillPattern: 'pointLozenge' }],
    ['satin-5', 'satin5', {}],
    ['tapestry', 'tapestry', {}],
    ['tablet-woven', 'tabletWoven', {}],
  ],
  Twined: [
    ['twining-open-s', 'twined', { spacingClass: 'open', rowSlant: 'S' }],
    ['twining-open-z', 'twined', { spacingClass: 'open', rowSlant: 'Z' }],
    ['twining-close-s', 'twined', { spacingClass: 'close', rowSlant: 'S' }],
    ['twining-close-countered', 'twined', { spacingClass: 'close', rowSlant: 'countered' }],
    ['twining-open-diagonal', 'twined', { spacingClass: 'open', engagement: 'diagonal', rowSlant: 'S' }],
    ['twining-close-diagonal', 'twined', { spacingClass: 'close', engagement: 'diagonal', rowSlant: 'S' }],
    ['twining-open-pile', 'twined', { spacingClass: 'open', pile: 'present', rowSlant: 'S' }],
    ['warp-twining-close-s', 'twined', { spacingClass: 'close', activeSystem: 'warpActive', rowSlant: 'S' }],
  ],
  'Looped and netted': [
    ['looping', 'simpleLooping', {}],
    ['netting-knotted', 'knottedNetting', {}],
    ['netting-knotless', 'knotlessNetting', {}],
  ],
  'Coiled and plaited': [
    ['coiling', 'coiled', {}],
    ['plaiting-checker', 'checkerPlaiting', {}],
    ['plaiting-twill', 'twillPlaiting22', {}],
  ],
};

interface Shown {
  readonly file: string;
  readonly drawing: Drawing;
}

function drawnUnder(heading: string): readonly Shown[] {
  return (SHOWN[heading] ?? []).map(([file, structure, facets]) => {
    const drawing = structureDrawing(defaultRegister(), structure, facets);
    if (drawing === null) throw new Error(`${structure} has no drawing`);
    return { file: `${file}.svg`, drawing };
  });
}

/** The picture of a structure with these facets, as the page shows it. */
export function structureFile(structure: string, facets: Facets): string {
  const wanted = JSON.stringify([structure, facets]);
  const shown = Object.values(SHOWN)
    .flat()
    .find(([, own, given]) => JSON.stringify([own, given]) === wanted);
  if (shown === undefined) throw new Error(`no picture of ${wanted}`);
  return `${shown[0]}.svg`;
}

/** The pictures of docs/images/structures: file name -> SVG. */
export function structureFiles(): ReadonlyMap<string, string> {
  return new Map(
    Object.keys(SHOWN)
      .flatMap(drawnUnder)
      .map(({ file, drawing }) => [file, drawingSvg(drawing)] as const),
  );
}

/** The page docs/structures.md. */
export function structuresPage(): string {
  return [
    '# Structures, drawn',
    '',
    '*Made by `npm run structures` from `src/attributes/drawing/`; do not edit by hand.*',
    '',
    'Schemas, not finds: they show which element passes over which, and nothing is to scale. Passive elements (and the warp)',
    'are light, active elements (and the weft) dark; where one system has two elements that change places, or one row',
    'is to be told from the next, the second is a middle tone. Pile is orange with a dark outline. They are made from the structure and its facets',
    '([what can be recorded](attributes.md)) after the definitions there; the way of drawing is common practice, no source.',
    '',
    'What a record leaves out the drawing has to choose; it says so under the picture. A term without a drawing of its own is',
    'shown as the broader term where that is true of it, and not at all where it is not (damask, compound weaves, gauze, knitting, sprang).',
    '',
    '**Slant.** The slant of a twined row is told with the row upright. In these pictures rows of weft-twining lie across: a',
    'row that is S leans like the stroke of Z as it lies there, and like that of S once the picture is turned by a quarter.',
    '',
    ...Object.keys(SHOWN).flatMap((heading) => [
      `## ${heading}`,
      '',
      '| | structure | what passes over what |',
      '|---|---|---|',
      ...drawnUnder(heading).map(
        ({ file, drawing }) =>
          `| ![${drawing.title}](images/structures/${file}) | ${drawing.title} | ${[drawing.says, ...drawing.notes].join(' ')} |`,
      ),
      '',
    ]),
    '## Names of kinds in six languages',
    '',
    'What a kind of fabric is called where a study says `kindLanguage` (in the workbench: *Take away*): "offene diagonale',
    'Zwirnbindung mit Flor", "cordé espacé en diagonale à poils". Schematic names, composed by rule; the words are common practice,',
    'no source. Behind "|" stands the form beside a feminine (Danish: neuter) noun; German adjectives take their ending by rule, and',
    'stand behind a comma where the gender of the noun is not known. Where a language has no word the English one stands.',
    '',
    `| | value | ${KIND_LANGUAGES.map((language) => LANGUAGE_NAMES[language]).join(' | ')} |`,
    `|---|---|${KIND_LANGUAGES.map(() => '---|').join('')}`,
    ...kindNames(defaultRegister()).map(
      ({ what, value, words }) =>
        `| ${what} | ${value} | ${KIND_LANGUAGES.map((language) => words[language].replaceAll('|', '\\|')).join(' | ')} |`,
    ),
    '',
  ].join('\n');
}
