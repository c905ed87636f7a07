import { printCount, printList } from '../../analyses/phrasing.ts';
import { atLevel } from '../../fragments/level/common-level.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { CompoundName } from '../../sources/names/compound-names.ts';
import type { NearNames } from '../../sources/names/near-names.ts';
import { nameIn } from '../../sources/reading/assemble.ts';
import type { Prepared } from '../prepare.ts';
import type { ReadinessLine } from '../results/results.ts';
import { MOST_NAMED, rowsWhere } from './rows.ts';

export function namesLine({ nearNames }: Prepared): readonly ReadinessLine[] {
  if (nearNames.length === 0) return [];
  const asOne = nearNames.filter(({ sure }) => sure !== 'doubtful');
  const asTwo = nearNames.filter(({ sure }) => sure === 'doubtful');
  const listed = (pairs: readonly NearNames[]) => {
    const shown = pairs.slice(0, MOST_NAMED).map(({ names: [a, b] }) => `“${a}” and “${b}”`);
    const rest = pairs.length - shown.length;
    return printList([...shown, ...(rest > 0 ? [printCount(rest, 'further pair')] : [])]);
  };
  const said = [
    ...(asOne.length === 0
      ? []
      : [`${listed(asOne)}; compared as one until somebody says that they are two`]),
    ...(asTwo.length === 0
      ? []
      : [`${listed(asTwo)}; compared as two until somebody says that they are one`]),
  ];
  return [
    {
      topic: 'names',
      state: 'ask',
      says: `Names that may be one: ${said.join('. And ')}.`,
      mend: 'Say of each pair whether it is one ("names" in the study, or on Sources).',
    },
  ];
}

/** Names made up of others, and what becomes of the records that bear them. */
export function compoundLines({ compoundNames, register }: Prepared): readonly ReadinessLine[] {
  const listed = (names: readonly CompoundName[]) => {
    const shown = names
      .slice(0, MOST_NAMED)
      .map(
        ({ attribute, name, of, records }) =>
          `${register.attributes.get(attribute)?.label.toLowerCase() ?? attribute} “${name}” (${of.join(' or ')}; ${printCount(records, 'fragment')})`,
      );
    const rest = names.length - shown.length;
    return printList([...shown, ...(rest > 0 ? [printCount(rest, 'further name')] : [])]);
  };
  const open = compoundNames.filter(({ settled }) => !settled);
  const settled = compoundNames.filter((one) => one.settled);
  return [
    ...(open.length === 0
      ? []
      : [
          {
            topic: 'compounds' as const,
            state: 'ask' as const,
            says: `Names made up of others: ${listed(open)}. Until somebody says what they are, these take no part where that label is the answer.`,
            mend: 'Say of each whether it is one of those ("oneOf") or a name of its own ("not"), under "names" in the study or on Sources.',
          },
        ]),
    ...(settled.length === 0
      ? []
      : [
          {
            topic: 'compounds' as const,
            state: 'mind' as const,
            says: `Known to be one of several, and not which: ${listed(settled)}. They take no part where that label is the answer, and verdicts are asked again with each at either end.`,
          },
        ]),
  ];
}

const LABELS = ['site', 'phase', 'period', 'region'] as const;

/** Share of the records that bear each label, for those that any does; by source where they differ. */
export function labelLines({ fragments, compoundNames }: Prepared): readonly ReadinessLine[] {
  const lines = LABELS.flatMap((id) => {
    const column = fragments.columns.get(id);
    if (column === undefined) return [];
    // Of what is called by two names it is not known which is its own.
    const made = new Set(compoundNames.flatMap(({ attribute, name }) => (attribute === id ? [name] : [])));
    const lacking = rowsWhere(fragments, (row) => {
      const name = nameIn(column, row);
      return name === '' || made.has(name);
    });
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
export function levelLines({ fragments, register }: Prepared): readonly ReadinessLine[] {
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
