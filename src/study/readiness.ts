import { printCount, printList, printSome } from '../analyses/phrasing.ts';
import { leastItems } from '../fragments/least-items.ts';
import { atLevel } from '../fragments/level/common-level.ts';
import { isMissing } from '../fragments/missing.ts';
import type { FragmentTable } from '../fragments/table.ts';
import { witnessCandidates } from '../sources/names/witness-candidates.ts';
import { nameIn } from '../sources/reading/assemble.ts';
import { identificationLine } from './identification.ts';
import type { Prepared } from './prepare.ts';
import type { ReadinessLine } from './results.ts';
import { shrinkageLine } from './shrinkage.ts';

/**
 * Are the data ready for a verdict? One line for each thing that verdicts lean on, before any is given: what counts
 * as one, to which depth kinds were recorded, how many records bear the labels, how sure they are, where the gaps
 * lie, who recorded, and which columns nobody has confirmed.
 */
export function readinessOf(prepared: Prepared): readonly ReadinessLine[] {
  return [
    witnessLine(prepared),
    ...namesLine(prepared),
    ...labelLines(prepared),
    ...levelLines(prepared),
    ...certaintyLine(prepared),
    ...identificationLine(prepared),
    ...gapLines(prepared),
    ...recorderLine(prepared),
    ...shrinkageLine(prepared),
    ...columnsLine(prepared),
  ];
}

function witnessLine(prepared: Prepared): ReadinessLine {
  const { witness, fragments, suggestedItem, register, n } = prepared;
  const counted = printCount(fragments.rows, 'fragment');
  if (witness.status === 'confirmed')
    return {
      topic: 'witness',
      state: 'ready',
      says: `${counted} of ${printCount(n.items, witness.one, witness.many)}, as confirmed.`,
    };
  const least = `They are of at least ${printCount(leastItems(fragments, register), 'object')}: so many contradict one another, within source, site, phase and context, in structure, fibre or readings a fifth apart.`;
  if (witness.status === 'absent')
    return {
      topic: 'witness',
      state: 'mind',
      says: `${counted}; no column names the object that a fragment is of, so each counts as a find of its own. ${least}`,
      mend: `Name the column that does, or say that each row is one.${likeliest(prepared)}`,
    };
  const objects = new Set(suggestedItem).size;
  return {
    topic: 'witness',
    state: 'ask',
    says: `${counted}; numbers in the tables seem to name ${printCount(objects, 'object')}, but nobody has said so, and each fragment counts. ${least}`,
    mend: `Say which column names the object ("witness" in the study, or on Sources).${likeliest(prepared)}`,
  };
}

/** The columns that may name the object, one of each source. */
function likeliest({ sources, register }: Prepared): string {
  const named = sources.flatMap((reading) => {
    const [first] = witnessCandidates(reading, register);
    return first === undefined ? [] : [`“${first.header}” of ${reading.name}`];
  });
  return named.length === 0 ? '' : ` Likeliest: ${printSome(named, MOST_NAMED)}.`;
}

function namesLine({ nearNames }: Prepared): readonly ReadinessLine[] {
  if (nearNames.length === 0) return [];
  const shown = nearNames.slice(0, MOST_NAMED).map(({ names: [a, b] }) => `“${a}” and “${b}”`);
  const rest = nearNames.length - shown.length;
  return [
    {
      topic: 'names',
      state: 'ask',
      says: `Names that may be one: ${printList([...shown, ...(rest > 0 ? [printCount(rest, 'further pair')] : [])])}.`,
      mend: 'Say of each pair whether it is one ("names" in the study, or on Sources).',
    },
  ];
}

/** Most pairs or labels that a line names. */
const MOST_NAMED = 4;

const LABELS = ['site', 'phase', 'period', 'region'] as const;

/** Share of the records that bear each label, for those that any does; by source where they differ. */
function labelLines({ fragments }: Prepared): readonly ReadinessLine[] {
  const lines = LABELS.flatMap((id) => {
    const column = fragments.columns.get(id);
    if (column === undefined) return [];
    const lacking = rowsWhere(fragments, (row) => nameIn(column, row) === '');
    if (lacking.length === fragments.rows) return [];
    return [{ label: column.attribute.label.toLowerCase(), lacking }];
  });
  const open = lines.filter(({ lacking }) => lacking.length > 0);
  if (lines.length === 0 || fragments.rows === 0) return [];
  if (open.length === 0)
    return [
      {
        topic: 'labels',
        state: 'ready',
        says: `Known of every fragment: ${printList(lines.map(({ label }) => label))}.`,
      },
    ];
  const said = open.map(
    ({ label, lacking }) => `${label} unknown of ${lacking.length}${sourcesOf(fragments, lacking)}`,
  );
  return [
    {
      topic: 'labels',
      state: 'mind',
      says: `Of ${printCount(fragments.rows, 'fragment')}, ${printList(said)}: these take no part where that label is the answer.`,
      mend: 'Fill them in, or join a table of assemblages that knows them.',
    },
  ];
}

/** " (all in a.csv)" where the rows come from one of several sources. */
function sourcesOf({ origin, sources }: FragmentTable, rows: readonly number[]): string {
  const from = new Set(rows.map((row) => origin[row].source));
  const [only] = from;
  return from.size === 1 && sources.length > 1 && only !== undefined ? ` (all in ${sources[only]})` : '';
}

/** Whose words are broader than those of the others, for every attribute of kinds with a hierarchy. */
function levelLines({ fragments, register }: Prepared): readonly ReadinessLine[] {
  if (!fragments.columns.has('site')) return [];
  return [...fragments.columns.values()].flatMap((column): ReadinessLine[] => {
    const { id, label, vocabulary, block } = column.attribute;
    if (vocabulary === undefined || block === 'context') return [];
    const { folds } = atLevel(fragments, id, 'site', register);
    if (folds.length === 0) return [];
    const said = folds.slice(0, 2).map(({ label: broad, because, records }) => {
      const whose = because.slice(0, 2).map((one) => `${one.label} (${one.broad} of ${one.of})`);
      return `“${broad}” is all that ${printList(whose)} ${because.length === 1 ? 'says' : 'say'} where ${records} others say more`;
    });
    const rest = folds.length - said.length;
    const asked = folds.filter(({ mayBePlain }) => mayBePlain);
    return [
      {
        topic: 'level',
        state: asked.length > 0 ? 'ask' : 'mind',
        says: `${label}: ${said.join('; ')}${rest > 0 ? `; and ${rest} more` : ''}. Sites are compared at the level that all record.`,
        mend:
          asked.length > 0
            ? `If a table names the forms of ${printList(asked.map(({ label: broad }) => broad))} wherever it can, say so in its profile (“tells”): the plain word is then a kind of its own.`
            : 'Record these more narrowly where the finds can be seen again.',
      },
    ];
  });
}

function certaintyLine({ fragments }: Prepared): readonly ReadinessLine[] {
  const doubtful = [...fragments.columns.values()].flatMap((column) => {
    if (column.kind !== 'term') return [];
    const count = rowsWhere(fragments, (row) => column.codes[row] >= 0 && column.certainty[row] > 0).length;
    return count === 0 ? [] : [{ label: column.attribute.label, count }];
  });
  if (doubtful.length === 0) return [];
  const shown = doubtful.sort((a, b) => b.count - a.count).slice(0, MOST_NAMED);
  return [
    {
      topic: 'certainty',
      state: 'mind',
      says: `Marked as doubtful: ${printList(shown.map(({ label, count }) => `${label} ${count}`))}; they count with the certain ones.`,
      mend: 'Select certain ones alone with "certainty" in a condition; where a verdict turns with them, its answer says so.',
    },
  ];
}

/** Attributes that one source or site records and another never does: a gap there is no absence. */
function gapLines({ fragments }: Prepared): readonly ReadinessLine[] {
  const { sources, origin } = fragments;
  if (sources.length < 2) return [];
  const rowsOf = sources.map((_, source) => rowsWhere(fragments, (row) => origin[row].source === source));
  const never = [...fragments.columns.values()].flatMap((column) => {
    if (!COMPARED.has(column.attribute.block) || column.attribute.derived) return [];
    const silent = sources.filter(
      (_, source) => rowsOf[source].length > 0 && rowsOf[source].every((row) => isMissing(column, row)),
    );
    const telling = sources.length - silent.length;
    return silent.length === 0 || telling === 0 ? [] : [{ label: column.attribute.label, silent }];
  });
  if (never.length === 0) return [];
  const shown = never
    .slice(0, MOST_NAMED)
    .map(({ label, silent }) => `${label} (not in ${printList(silent)})`);
  const rest = never.length - shown.length;
  return [
    {
      topic: 'gaps',
      state: 'mind',
      says: `Never recorded by some: ${printList([...shown, ...(rest > 0 ? [printCount(rest, 'further attribute')] : [])])}.`,
    },
  ];
}

const COMPARED: ReadonlySet<string> = new Set(['structure', 'spacing', 'fibre']);

function recorderLine({ fragments }: Prepared): readonly ReadinessLine[] {
  const column = fragments.columns.get('recorder');
  const names = new Set(
    column === undefined ? [] : rowsWhere(fragments, () => true).map((row) => nameIn(column, row)),
  );
  names.delete('');
  if (names.size === 0)
    return [
      {
        topic: 'recorders',
        state: 'mind',
        says: 'Who recorded is not known: a difference between recorders cannot be told from one between places.',
        mend: 'Add a column of recorders.',
      },
    ];
  const shown = printList([...names].slice(0, MOST_NAMED));
  const all = `${printCount(names.size, 'recorder')}: ${shown}${names.size > MOST_NAMED ? ' and others' : ''}`;
  // Initials end in a point of their own.
  return [{ topic: 'recorders', state: 'ready', says: all.endsWith('.') ? all : `${all}.` }];
}

function columnsLine({ sources }: Prepared): readonly ReadinessLine[] {
  const open = sources.flatMap(({ name, columns }) => {
    const suggested = columns.filter(
      ({ suggestion, attributes }) => suggestion !== undefined && attributes.length === 0,
    );
    return suggested.length === 0 ? [] : [`${suggested.length} of ${name}`];
  });
  if (open.length === 0)
    return [{ topic: 'columns', state: 'ready', says: 'No column waits for a confirmation.' }];
  return [
    {
      topic: 'columns',
      state: 'ask',
      says: `Columns whose meaning is only suggested, and not used: ${printList(open)}.`,
      mend: 'Confirm or refuse them on Sources, or in the profile.',
    },
  ];
}

function rowsWhere({ rows }: FragmentTable, holds: (row: number) => boolean): readonly number[] {
  return Array.from({ length: rows }, (_, row) => row).filter(holds);
}
