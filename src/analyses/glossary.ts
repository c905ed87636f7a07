import { STRUCTURE_WORDS } from './glossary-structures.ts';
import type { GlossaryWord } from './glossary-word.ts';

/**
 * The words that are used on screens, in the terminal and in reports, as the field and statistics use them: the panel
 * of the workbench, `thrum explain WORD` and docs/glossary.md (`npm run glossary`) are made of this. Terms of the trade
 * follow Emery 1966, Seiler-Baldinger 1994 and Adovasio 1977 where they agree, from memory.
 */
export const GLOSSARY: readonly { readonly title: string; readonly words: readonly GlossaryWord[] }[] = [
  {
    title: 'Of the material',
    words: [
      { word: 'fragment', meaning: 'one piece that survives and was recorded: one row of a table' },
      {
        word: 'item',
        meaning:
          'the original object that fragments come from; a study may call it a vessel, a grave or anything else',
      },
      {
        word: 'witness',
        meaning:
          'what counts as one in a study: a fragment until somebody says which column names the object',
      },
      { word: 'assemblage', meaning: 'what was found together: site and phase' },
      { word: 'comparanda', meaning: 'the records that a find is compared with' },
      {
        word: 'structure',
        meaning: 'how the elements engage: woven, twined, looped, netted, plaited, coiled',
        more: ['drawn', 'structures.md'],
      },
      {
        word: 'passive, active',
        meaning: 'the elements that stay straight, and those that turn around or interlace with them',
      },
      { word: 'row spacing', meaning: 'from the middle of one row to the middle of the next' },
      { word: 'row gap', meaning: 'the clear distance between two rows: spacing less the width of a row' },
      { word: 'density', meaning: 'elements per centimetre, counted at right angles to them' },
      {
        word: 'slant',
        meaning: 'lean of a turned element, held upright: S or Z',
        more: ['drawn', 'structures.md#twined'],
      },
      { word: 'pile, tufts', meaning: 'bundles that stand out from one face' },
      { word: 'kind', meaning: 'a structure, fibre or other term that records are counted by' },
      {
        word: 'look-alike',
        meaning:
          'a term that one piece may bear as well as another: linking and sprang, cross-knit looping and knitting, spliced and spun',
        more: ['list', 'attributes.md#look-alikes'],
      },
      {
        word: 'mixture',
        meaning:
          'several fibres at once in one system; counted as a kind of its own, and in each of its fibres',
      },
      {
        word: 'method of identification',
        meaning: 'how a fibre was told: it bounds how sure the fibre can be',
        more: ['how', 'methods/identification.md'],
      },
      {
        word: 'level',
        meaning:
          'how far down a vocabulary kinds are counted; the common level is the finest that everything compared records',
      },
      {
        word: 'broad term',
        meaning:
          'a term that says less than others under it: "tree bast" stands for lime bast or willow bast',
      },
      {
        word: 'gap',
        meaning: 'a value that is missing, with its reason: not observed, not applicable, absent',
      },
      {
        word: 'readiness',
        meaning:
          'whether the data carry a verdict: what counts as one, labels, levels, doubts, gaps, recorders',
      },
      {
        word: 'least number of objects',
        meaning:
          'where no column names the object: within a context (source, site, phase, context) fragments that contradict one another pair by pair (terms of which neither is the broader, readings more than a fifth apart) are as many objects; contexts are added up, as if no object lay in two',
      },
    ],
  },
  { title: 'Of structures, as schemas', words: STRUCTURE_WORDS },
  {
    title: 'Of an answer',
    words: [
      {
        word: 'verdict',
        meaning:
          'the one sentence that answers the question, made after what could overturn it was looked at',
      },
      { word: 'because', meaning: 'the evidence: how many, how large the difference, how likely by chance' },
      { word: 'what would change this', meaning: 'what turns the verdict here, tried where it can be tried' },
      { word: 'what would settle it', meaning: 'the measurement, table or confirmation that would decide' },
      { word: 'told apart', meaning: 'unlikely to differ by chance alone, at the confidence asked' },
      { word: 'not told apart', meaning: 'chance alone would do; it is not shown that they are the same' },
      {
        word: 'cannot be told',
        meaning: 'too few, nothing to compare, or the verdict turns with how the finds were recorded',
      },
      {
        word: 'cannot be excluded',
        meaning: 'a label that fits the find too well to be ruled out at the level asked',
      },
      {
        word: 'too few to exclude',
        meaning: 'a label with so few records that nothing could rule it out; it stays in the set',
      },
      { word: 'none of these', meaning: 'every label was judged, and every one is excluded' },
    ],
  },
  {
    title: 'Of statistics',
    words: [
      { word: 'n', meaning: 'how many records an answer rests on' },
      { word: 'median', meaning: 'the middle value' },
      {
        word: 'quartiles',
        meaning: 'the values that part the lowest and the highest quarter (type 7, Hyndman & Fan 1996)',
      },
      {
        word: 'interval, limits',
        meaning: 'a range that holds the true value in the share of cases that is named with it',
      },
      { word: 'bounds', meaning: 'what ranges and open-ended readings allow; no statement of chance' },
      { word: 'p', meaning: 'how often chance alone would give as much, or more' },
      {
        word: 'adjusted p',
        meaning: 'the same with regard to the number of questions asked at once (Holm 1979)',
      },
      { word: 'permuted', meaning: 'labels dealt again at random, to see what chance alone gives' },
      { word: 'resampled', meaning: 'items drawn again with replacement, to see how far a figure moves' },
      {
        word: 'dissimilarity',
        meaning: 'how unlike two records are: 0 alike in all that was compared, 1 as unlike as can be',
      },
      {
        word: 'likeness',
        meaning:
          'how alike two assemblages are in the shares of their kinds: 200 the same, 0 nothing shared (Robinson 1951)',
      },
      { word: 'ordination', meaning: 'a map that places similar records near each other' },
      { word: 'supplementary', meaning: 'placed on a map without a say in how it is drawn' },
      {
        word: 'silhouette',
        meaning:
          'how much nearer a record is to its own group than to the next: 1 well inside, 0 between, below 0 astray',
      },
      { word: 'medoid', meaning: 'the record of a group that is nearest to all its others' },
      {
        word: 'conformal p',
        meaning:
          'how typical a find is of a label: the share of its records that are as strange, or stranger',
      },
      { word: 'effect', meaning: 'how large a difference is, in units that do not grow with n' },
      {
        word: "Cliff's delta",
        meaning: 'of all pairs of one value from each group, how many more favour the first: -1 to 1',
      },
      {
        word: "Cramér's V",
        meaning: 'how strongly two attributes of kinds go together: 0 not at all, 1 wholly',
      },
    ],
  },
];
