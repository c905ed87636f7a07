import type { AmbiguousWords } from './words.ts';

/** Those of structure stand with the words of its descriptions (vocabularies/structure-words-asked.ts). */
export const AMBIGUOUS_TERMS: readonly (AmbiguousWords & { readonly vocabulary: string })[] = [
  {
    vocabulary: 'slant',
    words: ['up to the right', 'rising to the right', 'up right'],
    candidates: ['Z'],
    why: 'it is a Z where the row stood upright and an S where it lay across',
  },
  {
    vocabulary: 'slant',
    words: ['down to the right', 'falling to the right', 'up to the left', 'down right'],
    candidates: ['S'],
    why: 'it is an S where the row stood upright and a Z where it lay across',
  },
  {
    vocabulary: 'fibre',
    words: ['Indian hemp'],
    candidates: ['dogbane', 'hemp'],
    why: 'it is dogbane in North America, and elsewhere hemp or jute',
  },
  {
    vocabulary: 'fibre',
    words: ['caña', 'canna', 'cane', 'Rohr', 'canne'],
    candidates: ['grass', 'reed'],
    why: 'it is reed, giant reed, bamboo or any stiff stem',
  },
  {
    vocabulary: 'fibre',
    words: ['bark', 'Rinde', 'écorce', 'corteccia', 'corteza', 'bark fibre'],
    candidates: ['barkSheet', 'treeBast'],
    why: 'it may be outer bark in sheets or the bast beneath it',
  },
  {
    vocabulary: 'fibre',
    words: ['osier', 'withy', 'vimini', 'mimbre', 'Weidenrute', 'vidje'],
    candidates: ['woodSplint', 'willowBast'],
    why: 'it may be whole rods of willow, split ones, or the plant',
  },
  {
    vocabulary: 'fibre',
    words: ['alfa', 'halfah', 'alpha grass'],
    candidates: ['grass', 'esparto', 'halfa'],
    why: 'it is esparto in the West and halfa on the Nile',
  },
  {
    vocabulary: 'fibre',
    words: ['willow', 'Weide', 'saule', 'salice', 'sauce', 'pil', 'selje', 'Salix', 'Salix sp.'],
    candidates: ['willowBast', 'woodSplint'],
    why: 'of willow the bast was used, and whole or split rods',
  },
  {
    vocabulary: 'fibre',
    words: ['bulrush', 'bulrushes'],
    candidates: ['clubrush', 'reedmace'],
    why: 'it is clubrush to some and reedmace to others',
  },
  {
    vocabulary: 'fibre',
    words: ['palm fibre', 'palm fiber', 'Palmfaser', 'fibre de palmier', 'fibra di palma', 'fibra de palma'],
    candidates: ['palmLeaf'],
    why: 'it may be of the leaf or of its sheath',
  },
  {
    vocabulary: 'fibre',
    words: ['herbe', 'erba', 'hierba'],
    candidates: ['grass'],
    why: 'it is grass or any herb',
  },
  {
    vocabulary: 'fibre',
    words: ['cedar', 'Zeder', 'cèdre', 'cedro', 'cedertræ'],
    candidates: ['cedarBark'],
    why: 'it is the bark of red or yellow cedar, or a true cedar',
  },
  {
    vocabulary: 'preservation',
    words: ['peat', 'Torf', 'tourbe', 'torba', 'turba', 'tørv', 'torv'],
    candidates: ['bog', 'waterlogged'],
    why: 'peat grows in acid bogs and in fens, which keep other fibres',
  },
  {
    vocabulary: 'preservation',
    words: ['lacustrine', 'lake', 'See', 'lacustre'],
    candidates: ['waterlogged'],
    why: 'it names the setting, not how the piece survived',
  },
  {
    vocabulary: 'edge',
    words: ['orlo', 'søm'],
    candidates: ['hem'],
    why: 'it is a hem, a seam or any edge',
  },
  {
    vocabulary: 'processing',
    words: ['spun', 'gesponnen', 'filé', 'filato', 'hilado', 'spundet', 'spunnet'],
    candidates: ['draftSpun'],
    why: 'spliced yarn is twisted too, and was often called spun',
  },
  {
    vocabulary: 'observedOn',
    words: ['molde', 'mould', 'mold', 'moule', 'Form', 'matrice', 'stampo'],
    candidates: ['impression', 'cast'],
    why: 'it may be the hollow impression or what was cast from it',
  },
  {
    vocabulary: 'fibre',
    words: ['rod'],
    candidates: ['woodSplint', 'root'],
    why: 'in English it is a rod of wood, in Danish a root',
  },
  {
    vocabulary: 'fibre',
    words: ['lime'],
    candidates: ['limeBast'],
    why: 'the tree is meant as a rule, but the word is also the citrus and burnt stone',
  },
  {
    vocabulary: 'fibre',
    words: ['Bast'],
    candidates: ['bastFibre'],
    why: 'in some reports it is tree bast, in others any phloem fibre',
  },
  {
    vocabulary: 'fibre',
    words: ['lind'],
    candidates: ['limeBast'],
    why: 'in Danish it is the lime tree; beside Norwegian "lin", flax, it is easily mistaken',
  },
  {
    vocabulary: 'fibre',
    words: ['alm'],
    candidates: ['elmBast'],
    why: 'in Danish and Norwegian it is the elm; a slip is likely in other languages',
  },
];
