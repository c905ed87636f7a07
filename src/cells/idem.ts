import { foldCell } from './text.ts';

/**
 * How catalogues say "the same as the one above", by language: the one list from which both a whole cell and one that
 * goes on with something of its own ("ebd., Grab 5") are told.
 */
interface AsAbove {
  /** May be followed up with something of its own. */
  readonly ahead: readonly string[];
  /** Only as the whole cell: "same, but coarser" is a remark. */
  readonly alone: readonly string[];
}

// biome-ignore format: one language a line
const AS_ABOVE: Readonly<Record<string, AsAbove>> = {
  signs: { ahead: [], alone: ['"', "''", '〃', '-"-', '- " -', '„'] },
  la: { ahead: ['idem', 'id.', 'ibid.', 'ibid', 'ibidem', 'ib.'], alone: [] },
  en: { ahead: ['ditto', 'do.', 'as above', 'same as above'], alone: ['do', 'same', 'see above'] },
  de: { ahead: ['ebd.', 'ebda.', 'ebd', 'ebenda', 'dto.', 'dito', 's.o.', 's. o.', 'siehe oben', 'wie oben', 'wie vor'], alone: ['ebenso'] },
  fr: { ahead: ['comme ci-dessus'], alone: ['même', 'voir ci-dessus'] },
  it: { ahead: ['come sopra', 'c.s.'], alone: [] },
  es: { ahead: ['como arriba'], alone: ['lo mismo', 'igual'] },
  da: { ahead: ['som ovenfor', 'som over'], alone: ['samme', 'samme som over'] },
};

const ALL = Object.values(AS_ABOVE);

/** Folded as cells are looked up. */
export const IDEM: ReadonlySet<string> = new Set(
  ALL.flatMap(({ ahead, alone }) => [...ahead, ...alone]).map(foldCell),
);

/** Wordings that may stand before an addition. */
export const IDEM_AHEAD: readonly string[] = ALL.flatMap(({ ahead }) => ahead);
