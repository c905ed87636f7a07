import type { ReactNode } from 'react';
import { Button as AriaButton, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { ColumnSlip } from '../../../sources/quality/bounds.ts';
import { lookAlikeInWords } from '../../../sources/quality/look-alikes.ts';
import type { RecorderDifference } from '../../../sources/quality/recorders.ts';
import type { SourceView } from '../../engine/views/sources.ts';
import { Button } from '../../parts/controls.tsx';
import { count, percent, readable } from '../../parts/numbers.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import { withoutDecision } from '../../state/workspace.ts';
import { RowLink } from './row-link.tsx';
import type { Target } from './target.ts';
import { useProfile } from './use-profile.ts';

export interface QualityProps {
  readonly source: SourceView;
  readonly onTarget: (target: Target) => void;
}

const MOST = 40;

/** What to look at again in one table. Nothing in it was left out for any of this. */
export function Quality({ source, onTarget }: QualityProps) {
  const { view, workspace, change } = useWorkbench();
  const { edit } = useProfile(source.name);
  const { quality } = source;
  const labelOf = (id: string) => view?.register.find((attribute) => attribute.id === id)?.label ?? id;
  const columnOf = (id: string) => source.columns.find((column) => column.attributes.includes(id))?.index;
  const at = (row: number, id: string) => (
    <RowLink row={row} column={columnOf(id) ?? 0} onTarget={onTarget} />
  );
  const hardly = quality.outOfBounds.filter(({ beyond, ofStructure }) => beyond === 'limit' || ofStructure);
  const heaped = quality.heaping.filter(({ preferred }) => preferred);
  const across = (view?.together.contradictions ?? []).filter(
    ({ rows }) => new Set(rows.map((row) => view?.places[row]?.source)).size > 1,
  );
  const swapped = (view?.together.swapped ?? []).filter(({ sources }) => sources.includes(source.name));
  const decided = source.repeatedIds.filter(({ decision }) => decision !== null);
  const pairs = (workspace.study.duplicates ?? []).filter(
    ({ first, second }) => first.source === source.name || second.source === source.name,
  );
  return (
    <div className="stack tight quality">
      <Sort title="Columns that may be in another unit" count={quality.columnSlips.length} open>
        {quality.columnSlips.map((slip) => (
          <SlipLine key={slip.attribute} source={source} slip={slip} label={labelOf(slip.attribute)} />
        ))}
      </Sort>
      <Sort
        title="Readings that are hardly possible, or unusual for the structure (kept)"
        count={hardly.length}
      >
        {hardly.slice(0, MOST).map((one) => (
          <li key={`${one.attribute}:${one.row}`}>
            {at(one.row, one.attribute)} {labelOf(one.attribute)}: <span className="quoted">{one.raw}</span>
            {one.likely === undefined ? '' : `; ${one.likely}`}
          </li>
        ))}
        <More all={hardly.length} />
      </Sort>
      <Sort title="Cells of one row that do not go together (kept)" count={quality.crossChecks.length}>
        {quality.crossChecks.slice(0, MOST).map((one) => (
          <li key={`${one.rule}:${one.row}:${one.cells.map(({ attribute }) => attribute).join()}`}>
            {at(one.row, one.cells[0]?.attribute ?? '')}{' '}
            {one.cells.map(({ attribute, raw }, i) => (
              <span key={attribute}>
                {i > 0 ? ', ' : ''}
                {labelOf(attribute)} <span className="quoted">{raw}</span>
              </span>
            ))}
            . {one.why}
          </li>
        ))}
        <More all={quality.crossChecks.length} />
      </Sort>
      <Sort title="Sources that may write warp and weft the other way round" count={swapped.length}>
        {swapped.map(({ sources, of }) => (
          <li key={sources.join()}>
            In {sources[0]} system 1 is the denser one in {of[0][0]} of {of[0][1]} woven or plaited finds, in{' '}
            {sources[1]} system 2 in {of[1][0]} of {of[1][1]}. It may be the cloths; if it is the writing,
            swap the columns of one of them, or say “not told apart”.
          </li>
        ))}
      </Sort>
      <Sort title="Terms that another may hide behind (kept)" count={quality.lookAlikes.length}>
        {quality.lookAlikes.map((one) => (
          <li key={one.of.id}>{lookAlikeInWords(one)}</li>
        ))}
      </Sort>
      <Sort
        title="Fragments of one item that contradict each other"
        count={quality.contradictions.length + across.length}
      >
        {quality.contradictions.slice(0, MOST).map((one) => (
          <li key={`${one.item}:${one.attribute}`}>
            {one.item}, {labelOf(one.attribute)}:{' '}
            {one.says.map((text, i) => (
              <span key={`${one.rows[i]}`}>
                {i > 0 ? ', ' : ''}
                <span className="quoted">{text}</span> {at(one.rows[i] ?? 0, one.attribute)}
              </span>
            ))}
          </li>
        ))}
        <More all={quality.contradictions.length} />
        {across.slice(0, MOST).map((one) => (
          <li key={`across:${one.item}:${one.attribute}`}>
            {one.item}, {labelOf(one.attribute)}:{' '}
            {one.says
              .map((text, i) => {
                const place = view?.places[one.rows[i] ?? -1];
                return `“${text}” in ${place?.source ?? ''}, row ${place?.row ?? ''}`;
              })
              .join('; ')}
          </li>
        ))}
      </Sort>
      <Sort
        title="Recorders or sources that differ on one assemblage"
        count={recordersOf(source, view?.together.recorders).length}
      >
        {recordersOf(source, view?.together.recorders).map((one) => (
          <li key={`${one.by}:${one.attribute}:${one.assemblage}:${one.names.join()}`}>
            {labelOf(one.attribute)}, {one.assemblage}: median {readable(one.medians[0])} by {one.names[0]} (
            {count(one.n[0], 'item')}), {readable(one.medians[1])} by {one.names[1]} (
            {count(one.n[1], 'item')}). The difference may lie in the finds that each had.
          </li>
        ))}
      </Sort>
      <Sort title="Last digits that recorders preferred" count={heaped.length}>
        {heaped.map((one) => (
          <li key={one.attribute}>
            {labelOf(one.attribute)}: {percent(one.zeroOrFive)} of {one.n} readings end in 0 or 5; without
            preference it would be 20 %.
          </li>
        ))}
      </Sort>
      <Sort title="Decisions about rows" count={decided.length + pairs.length}>
        {decided.map(({ id, decision }) => (
          <li key={id}>
            {id}: {SAID[decision ?? 'one-item']}.{' '}
            <Button
              look="plain small"
              label={`Ask again about ${id}`}
              onPress={() =>
                edit(({ repeatedIds, ...profile }) => {
                  const { [id]: own, ...ids } = repeatedIds?.ids ?? {};
                  // An answer that was given for all is taken back for all.
                  return own === undefined
                    ? { ...profile, repeatedIds: { ids } }
                    : { ...profile, repeatedIds: { ...repeatedIds, ids } };
                }, `ask again about ${id}`)
              }
            >
              Ask again
            </Button>
          </li>
        ))}
        {pairs.map((pair) => (
          <li key={`${pair.first.source}:${pair.first.id}:${pair.second.id}`}>
            {pair.first.id} of {pair.first.source} and {pair.second.id} of {pair.second.source}:{' '}
            {SAID[pair.decision]}.{' '}
            <Button
              look="plain small"
              label={`Ask again about ${pair.second.id}`}
              onPress={() => change((now) => withoutDecision(now, pair), `ask again about ${pair.second.id}`)}
            >
              Ask again
            </Button>
          </li>
        ))}
      </Sort>
      <Sort title="How much is recorded" count={quality.filled.length}>
        <li>
          <table className="result-table small">
            <thead>
              <tr>
                <th scope="col">attribute</th>
                <th scope="col" className="number">
                  filled
                </th>
                <th scope="col" className="number">
                  not observed
                </th>
                <th scope="col" className="number">
                  does not apply
                </th>
                <th scope="col" className="number">
                  absent
                </th>
              </tr>
            </thead>
            <tbody>
              {quality.filled.map((one) => (
                <tr key={one.attribute}>
                  <th scope="row">{one.label}</th>
                  <td className="number">{percent(one.rows === 0 ? 0 : one.filled / one.rows)}</td>
                  <td className="number">{one.notObserved}</td>
                  <td className="number">{one.notApplicable}</td>
                  <td className="number">{one.absent}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </li>
      </Sort>
    </div>
  );
}

const SAID = {
  'one-item': 'fragments of one item',
  'two-finds': 'different finds',
  'first-only': 'one find, the first row is kept',
  'last-only': 'one find, the last row is kept',
  'second-only': 'one find, the second row is kept',
} as const;

function recordersOf(
  source: SourceView,
  together: readonly RecorderDifference[] | undefined,
): readonly RecorderDifference[] {
  const mine = (together ?? []).filter(({ by, names }) => by === 'source' && names.includes(source.name));
  return [...source.quality.recorders, ...mine];
}

function Sort({
  title,
  count: many,
  open,
  children,
}: {
  title: string;
  count: number;
  open?: boolean;
  children: ReactNode;
}) {
  if (many === 0) return null;
  return (
    <Disclosure defaultExpanded={open ?? false}>
      <Heading level={4} className="plain-head">
        <AriaButton slot="trigger" className="button plain small">
          {title}: {many}
        </AriaButton>
      </Heading>
      <DisclosurePanel>
        <ul className="points small">{children}</ul>
      </DisclosurePanel>
    </Disclosure>
  );
}

function More({ all }: { all: number }) {
  return all > MOST ? <li className="soft">and {all - MOST} more</li> : null;
}

/** "written in cm, read as mm?" names the unit that the column may really be in. */
function SlipLine({ source, slip, label }: { source: SourceView; slip: ColumnSlip; label: string }) {
  const { column: setRule } = useProfile(source.name);
  const column = source.columns.find(
    ({ attributes }) => attributes.length === 1 && attributes[0] === slip.attribute,
  );
  const unit = /^(?:written in|counted) ([^,]+),/.exec(slip.likely)?.[1]?.replace('inches', 'inch');
  return (
    <li>
      {label}: {slip.outside} of {slip.readings} readings are unusual; {slip.likely}{' '}
      {column === undefined || unit === undefined ? null : (
        <Button
          look="small"
          label={`“${column.header}” is in ${unit}`}
          onPress={() =>
            setRule(column.header, { attribute: slip.attribute, unit }, `“${column.header}” is in ${unit}`)
          }
        >
          It is in {unit.replace(/^per/, 'counts per')}
        </Button>
      )}
    </li>
  );
}
