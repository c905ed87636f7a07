import type { AttributeDefinition, Block } from '../attributes/definition.ts';
import { isMissing } from '../fragments/missing.ts';
import { hasQuantities } from '../fragments/quantity.ts';
import type { Column, FragmentTable } from '../fragments/table.ts';
import { compoundNames } from '../sources/names/compound-names.ts';
import { nameIn } from '../sources/reading/assemble.ts';
import { checkStudy } from './load.ts';
import type { StudyInput } from './schema.ts';

/** Attributes of one sort that a first study asks about, those recorded most often first. */
const MOST = 6;

/** Fewer records than this are not worth grouping at the start. */
const FEWEST_TO_GROUP = 10;

const DESCRIBING: readonly Block[] = ['structure', 'spacing', 'fibre', 'find'];
const NUMBERS: readonly AttributeDefinition['scale'][] = ['ratio', 'interval'];

/** What a study begins with beside its questions. */
export interface Beginning {
  readonly title: string;
  /** The tables and their profiles, as the study file is to name them. */
  readonly sources: StudyInput['sources'];
  /** Attributes of the reader's own. */
  readonly attributes?: readonly AttributeDefinition[];
  readonly subject?: string;
}

interface Recorded {
  readonly attribute: AttributeDefinition;
  readonly n: number;
  /** Different values of kinds; 0 for numbers. */
  readonly values: number;
}

/** Groups of more than this many kinds are names rather than groups. */
const MOST_GROUPS = 40;

/**
 * A study to begin with: the tables and first questions that they can answer, to be edited. What the tables do
 * not record is not asked about.
 *
 * @param table what was read of them, combined.
 */
export function startStudy(
  { title, sources, attributes = [], subject }: Beginning,
  table: FragmentTable,
): StudyInput {
  const all: readonly Recorded[] = [...table.columns.values()].map((column) => ({
    attribute: column.attribute,
    n: filled(column, table.rows),
    values: valuesOf(column),
  }));
  const recorded = all
    .filter(({ attribute, n }) => n > 0 && DESCRIBING.includes(attribute.block) && attribute.scale !== 'text')
    .sort((a, b) => b.n - a.n);
  const analyses = [...questionsOfRecords(recorded, all, table), ...questionsOfPlaces(recorded, table)];
  const study = {
    title,
    seed: 1,
    unit: 'item',
    ...(subject === undefined ? {} : { subject }),
    ...(attributes.length === 0 ? {} : { attributes }),
    sources,
    analyses,
  };
  checkStudy(study, title);
  return study as StudyInput;
}

const ids = (wanted: readonly Recorded[], most = MOST): string[] =>
  wanted.slice(0, most).map(({ attribute }) => attribute.id);

/** What the records can be grouped by: site, phase or period; else a kind of few values. */
function groupingOf(recorded: readonly Recorded[], all: readonly Recorded[]): Recorded | undefined {
  const named = ['site', 'phase', 'period', 'region'].flatMap((id) =>
    all.filter(({ attribute, values }) => attribute.id === id && values > 1),
  );
  const own = recorded.filter(
    ({ attribute, values, n }) =>
      attribute.scale === 'nominal' && values > 1 && values <= Math.min(MOST_GROUPS, n / 2),
  );
  return named[0] ?? own[0];
}

function questionsOfRecords(
  recorded: readonly Recorded[],
  all: readonly Recorded[],
  table: FragmentTable,
): unknown[] {
  const numbers = recorded.filter(({ attribute }) => NUMBERS.includes(attribute.scale));
  const kinds = recorded.filter(({ attribute }) => !NUMBERS.includes(attribute.scale));
  const group = groupingOf(recorded, all);
  const site = all.find(({ attribute, values }) => attribute.id === 'site' && values > 0);
  const by = site !== undefined ? { by: ['site'] } : {};
  const asked = kinds.filter(({ attribute }) => attribute !== group?.attribute);
  const varied = asked.filter(({ values }) => values > 1);
  const analyses: unknown[] = [];
  const each = site === undefined ? '' : ', site by site';
  if (numbers.length > 0)
    analyses.push({
      id: 'numbers',
      kind: 'summary',
      title: `What was measured${each}`,
      of: ids(numbers),
      ...by,
    });
  if (kinds.length > 0)
    analyses.push({
      id: 'kinds',
      kind: 'summary',
      title: `Which kinds there are${each}`,
      of: ids(kinds),
      ...by,
    });
  if (group !== undefined && numbers.length > 0)
    analyses.push({ id: 'differ', kind: 'contrast', of: ids(numbers), by: group.attribute.id });
  if (group !== undefined && varied[0] !== undefined)
    analyses.push({
      id: 'table',
      kind: 'crosstab',
      rows: group.attribute.id,
      columns: varied[0].attribute.id,
    });
  const ofCloth = recorded.filter(({ attribute }) => attribute.block !== 'find');
  // A table about something else is weighed by what it records.
  const weighed = ofCloth.length > 0 ? ofCloth : recorded;
  // The rows of a table of counts are cells, and no records that could be grouped.
  if (table.rows >= FEWEST_TO_GROUP && weighed.length > 1 && !hasQuantities(table)) {
    const many = weighed.length > MOST && weighed.every(({ attribute }) => attribute.scale === 'presence');
    analyses.push({ id: 'groups', kind: 'grouping', of: ids(weighed, many ? weighed.length : MOST) });
  }
  return analyses;
}

/** Places fewer than three are alike or not; from three on one of them has a standing among the others. */
const FEWEST_PLACES = 3;

/** How alike the places are, and where the first of the first table, as a rule one's own, stands among them. */
function questionsOfPlaces(recorded: readonly Recorded[], table: FragmentTable): unknown[] {
  const kinds = recorded.filter(({ attribute, values }) => attribute.scale === 'nominal' && values > 1);
  const kind = kinds.find(({ attribute }) => attribute.id === 'structure') ?? kinds[0];
  const [first, ...others] = placesOf(table);
  if (kind === undefined || first === undefined || others.length + 1 < FEWEST_PLACES) return [];
  const of = kind.attribute.id;
  return [
    { id: 'alike', kind: 'similarity', assemblages: 'site', of },
    { id: 'standing', kind: 'standing', title: `How ${first} stands among the others`, site: first, of },
  ];
}

/** Sites in the order of the table; a name made up of others is none. */
function placesOf(table: FragmentTable): readonly string[] {
  const column = table.columns.get('site');
  const counts = new Map<string, number>();
  for (let row = 0; row < table.rows; row++) {
    const name = nameIn(column, row);
    if (name !== '') counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  const made = new Set(compoundNames('site', counts).map(({ name }) => name));
  return [...counts.keys()].filter((name) => !made.has(name));
}

function filled(column: Column, rows: number): number {
  return Array.from({ length: rows }, (_, row) => row).filter((row) => !isMissing(column, row)).length;
}

/** Different values of a column of kinds; 0 for numbers. */
function valuesOf(column: Column): number {
  return column.kind === 'term' ? new Set(column.codes.filter((code) => code >= 0)).size : 0;
}
