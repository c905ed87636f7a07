/**
 * What can be recorded about a find. Attributes and vocabularies are data; everything that reads,
 * compares or draws them works from these definitions alone, so that a study can add its own.
 */

/** The first three blocks are weighed in a dissimilarity; the other two describe and group. */
export type Block = 'structure' | 'spacing' | 'fibre' | 'find' | 'context';

/**
 * - `ratio`, `interval`: numbers with a unit.
 * - `ordinal`: grades in the order that `levels` gives, lowest first.
 * - `nominal`: kinds; with a `vocabulary` they form a tree, without one every wording is its own kind.
 * - `binary`: yes/no, where two noes are an agreement.
 * - `presence`: yes/no, where joint absence says nothing.
 * - `text`: identifiers and remarks; kept and shown, never compared.
 */
export type Scale = 'ratio' | 'interval' | 'ordinal' | 'nominal' | 'binary' | 'presence' | 'text';

/** Languages in which headers and terms are recognised. */
export type Language = 'en' | 'de' | 'fr' | 'it' | 'es' | 'da' | 'no' | 'la';

export type Synonyms = Readonly<Partial<Record<Language, readonly string[]>>>;

/** Bounds that flag a reading for a second look; they never exclude it. Same unit as the attribute. */
export interface Plausible {
  readonly usual?: readonly [low: number, high: number];
  readonly limit?: readonly [low: number, high: number];
}

export interface AttributeDefinition {
  /** camelCase, unique within a study. */
  readonly id: string;
  readonly label: string;
  readonly block: Block;
  readonly scale: Scale;
  /** Canonical unit of the stored numbers: "mm", "per cm", "degree", "g", "year" … */
  readonly unit?: string;
  /** Id of the vocabulary whose terms this attribute takes. */
  readonly vocabulary?: string;
  /** Grades of an ordinal attribute, lowest first. */
  readonly levels?: readonly string[];
  readonly plausible?: Plausible;
  /** Structure terms (with all their children) for which the attribute makes sense; absent = all. */
  readonly appliesTo?: readonly string[];
  /** `log`: ratios matter, so that 2 to 4 is as far as 20 to 40. */
  readonly transform?: 'log';
  /** Computed from other attributes of the same fragment, so never weighed beside them unless asked for. */
  readonly derived?: true;
  /** A view made of other attributes as a study asks for it; no column of a source feeds it. */
  readonly composed?: true;
  /** What a study composes it of, where the study names the facets. */
  readonly composedOf?: readonly string[];
  /** Language of the composed names, where it is not English. */
  readonly composedIn?: string;
  /** Where it is one side of a description that names several at once. */
  readonly facet?: Facet;
  readonly synonyms?: Synonyms;
  /** What it is, in one sentence. */
  readonly definition?: string;
  /** How it is counted, measured or told on the piece, in one sentence. */
  readonly counted?: string;
  /** What turning the piece, taking its systems the other way round, or an impression does to it. */
  readonly oriented?: OrientedBy;
  /** Of what is computed from other cells: an example done by hand. */
  readonly worked?: Worked;
  /** Published source, or "common practice, no source". */
  readonly source: string;
}

/**
 * - `free`: nothing.
 * - `swaps`: the other way round, the two systems exchange their values.
 * - `inverts`: the other way round, it becomes one divided by itself; `sign`: it changes its sign.
 * - `turns`: a quarter turn exchanges S and Z, and so does a mirror image.
 * - `mirrors`: turning does nothing; a mirror image exchanges S and Z.
 * - `faces`: the two faces may differ. `edge`: only an edge or the shape tells it.
 */
export type OrientedBy = 'free' | 'swaps' | 'inverts' | 'sign' | 'turns' | 'mirrors' | 'faces' | 'edge';

/** What follows from some cells, by hand. */
export interface Worked {
  /** Attribute -> the cell as a recorder would write it, in the attribute's unit. */
  readonly cells: Readonly<Record<string, string>>;
  /** The number at the readings as printed, or the term. */
  readonly gives: number | string;
  /** The sum, as one would write it down. */
  readonly how: string;
}

/**
 * One side of what a description says in one breath: "open diagonal twining with pile" tells the structure,
 * the spacing of rows, the engagement and the pile.
 */
export interface Facet {
  /** Attribute whose descriptions tell it. */
  readonly of: string;
  /** Its name in a list of facets, beside the id of the attribute: "openness". */
  readonly name: string;
  /** Where its word stands in a composed name: before the noun, before the noun's last word, or after it. */
  readonly stands: 'before' | 'inside' | 'after';
  /** Lower stands farther left. */
  readonly order: number;
  /** Value -> its words in a composed name; a value that is left out is not said. */
  readonly words: Readonly<Record<string, string>>;
  /** What a catalogue that tells this facet means by saying nothing of it. */
  readonly unmarked?: string;
  /** Structures of which silence says that; absent = all that the facet applies to. */
  readonly unmarkedOf?: readonly string[];
}

/** A wording that says more than one term, or what no term of the vocabulary says by itself. */
export interface DescriptionWord {
  /** Name in studies and profiles, where it has one: "openTwining". */
  readonly id?: string;
  readonly label?: string;
  /** Attribute -> term, grade, "present" or "absent", or a number in digits. */
  readonly sets: Readonly<Record<string, string>>;
  /** Holds only where the structure is one of these or narrower; absent = whatever the structure. */
  readonly when?: readonly string[];
  /** Holds only where no other word names a structure. */
  readonly alone?: true;
  /** The structure that it sets gives way to any that another word names. */
  readonly weak?: true;
  /** Holds only as it is spelled: without its accents it is another word. */
  readonly accented?: true;
  /** The wording leaves something open: it is read as far as `sets` goes, and this is asked. */
  readonly asks?: string;
  /** With `asks`: the term or named word that is meant as a rule. */
  readonly suggests?: string;
  readonly synonyms: Synonyms;
}

export interface Term {
  /** camelCase, unique within its vocabulary. */
  readonly id: string;
  readonly label: string;
  /** Id of the broader term; absent for a root. */
  readonly parent?: string;
  /** The word that a composed name is built on, where it is not the label: "twining" for "twined". */
  readonly noun?: string;
  /**
   * What a broader term says of itself. `exhausted` (the default of a term that has narrower ones): each find is
   * of a narrower kind, only which is not said. `variants`: a kind in its own right, some of whose forms have names.
   * `plain`: a composed name that stands only where everything about a find is known and none of it has a word.
   */
  readonly inner?: 'exhausted' | 'variants' | 'plain';
  /** Says what was made more than how: in a description it gives way to any other structure. */
  readonly vague?: true;
  /** Other structures are made of it too: in a description a word before it that is not known may say of what. */
  readonly ingredient?: true;
  readonly definition?: string;
  readonly synonyms?: Synonyms;
  /** Says at once what these terms of its vocabulary say; a list of them is it. */
  readonly joins?: readonly string[];
  /** Says what was written but not what it is: counted apart, and unknown in a dissimilarity. */
  readonly unsettled?: true;
  /** Published source, or "common practice, no source". */
  readonly source: string;
}

export interface Vocabulary {
  readonly id: string;
  readonly label: string;
  readonly terms: readonly Term[];
  /** Several terms may hold at once ("wool and silk"): a list of them is one mixture (mixtures.ts). */
  readonly mixes?: true;
  /** Further wordings of descriptions, beside those of the terms. */
  readonly words?: readonly DescriptionWord[];
  /** The wordings of a facet's terms are read in descriptions too; what any of them says of other facets. */
  readonly described?: Readonly<Record<string, string>>;
}

/** Everything a study knows how to record: the defaults of Thrum plus the study's own. */
export interface Register {
  readonly attributes: ReadonlyMap<string, AttributeDefinition>;
  readonly vocabularies: ReadonlyMap<string, Vocabulary>;
  /** What the study is about, where it says so: decides how much short and common headers may mean. */
  readonly subject?: string;
  /** Where the study parts what it derives, where it says so (fragments/facet-limits.ts). */
  readonly limits?: FacetLimits;
}

/** Limits between the states of facets that are derived; what is left out stays as proposed. */
export interface FacetLimits {
  /** Gap over row width up to which rows are close, and above which they are open; row widths in mm taken as possible. */
  readonly openness?: {
    readonly close?: number;
    readonly open?: number;
    readonly possibleRowWidth?: readonly [number, number];
  };
  /** The denser system over the other, up to which a weave is balanced, and from which one face shows alone. */
  readonly face?: { readonly balanced?: number; readonly faced?: number };
}
