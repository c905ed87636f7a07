import type { GlossaryWord } from './glossary-word.ts';

/** Structures that answers speak of, each with the schema that shows which element passes over which. */
export const STRUCTURE_WORDS: readonly GlossaryWord[] = [
  {
    word: 'tabby',
    meaning: 'woven over one, under one',
    drawn: { structure: 'tabby', facets: {} },
  },
  {
    word: 'weft-faced, warp-faced',
    meaning: 'so dense in one system that it hides the other; of tabby also called repp',
    drawn: { structure: 'tabby', facets: { face: 'weftFaced' } },
  },
  {
    word: 'half-basket',
    meaning: 'tabby with pairs in one system and single elements in the other',
    drawn: { structure: 'tabby', facets: { elementGrouping: 'pairedOne' } },
  },
  {
    word: 'basket weave',
    meaning: 'tabby with pairs, or more, in both systems',
    drawn: { structure: 'tabby', facets: { elementGrouping: 'pairedBoth' } },
  },
  {
    word: 'twill',
    meaning: 'woven so that the floats of each row lie one element on, which makes diagonal lines',
    drawn: { structure: 'twill22', facets: {} },
  },
  {
    word: 'tapestry',
    meaning: 'weft-faced, with wefts that turn back where their patch of colour ends',
    drawn: { structure: 'tapestry', facets: {} },
  },
  {
    word: 'tablet weaving',
    meaning: 'a band whose warps are twisted in small groups and locked by the weft',
    drawn: { structure: 'tabletWoven', facets: {} },
  },
  {
    word: 'open twining',
    meaning: 'two active elements twist about each other around the passives, rows with a clear gap between',
    drawn: { structure: 'twined', facets: { spacingClass: 'open', rowSlant: 'S' } },
  },
  {
    word: 'close twining',
    meaning: 'the same with rows that touch',
    drawn: { structure: 'twined', facets: { spacingClass: 'close', rowSlant: 'S' } },
  },
  {
    word: 'countered twining',
    meaning: 'rows that lean S and Z by turns',
    drawn: { structure: 'twined', facets: { spacingClass: 'close', rowSlant: 'countered' } },
  },
  {
    word: 'diagonal twining',
    meaning: 'the pairs of passives that are enclosed shift by one from row to row',
    drawn: {
      structure: 'twined',
      facets: { spacingClass: 'open', engagement: 'diagonal', rowSlant: 'S' },
    },
  },
  {
    word: 'twining with pile',
    meaning: 'bundles are laid into the rows and hang on one face',
    drawn: { structure: 'twined', facets: { spacingClass: 'open', pile: 'present', rowSlant: 'S' } },
  },
  {
    word: 'looping',
    meaning: 'one element hooked into its own row before, without knots',
    drawn: { structure: 'simpleLooping', facets: {} },
  },
  {
    word: 'knotted netting',
    meaning: 'open meshes, fixed by a knot at each corner',
    drawn: { structure: 'knottedNetting', facets: {} },
  },
  {
    word: 'coiling',
    meaning: 'a spiral foundation sewn to the coil before',
    drawn: { structure: 'coiled', facets: {} },
  },
  {
    word: 'plaiting',
    meaning: 'all elements are active and cross each other',
    drawn: { structure: 'checkerPlaiting', facets: {} },
  },
];
