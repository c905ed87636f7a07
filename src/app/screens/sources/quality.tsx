import { agreementInWords } from '../../../sources/quality/derived-facets.ts';
import { lookAlikeInWords } from '../../../sources/quality/look-alikes.ts';
import type { RecorderDifference } from '../../../sources/quality/recorders.ts';
import type { SourceView } from '../../engine/views/sources.ts';
import { count, percent, readable } from '../../parts/numbers.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import { DecidedRows } from './decided-rows.tsx';
import { MOST, More, Sort } from './quality-list.tsx';
import { Recorded } from './recorded.tsx';
import { RowLink } from './row-link.tsx';
import type { Target } from './target.ts';
import { SlipLine } from './unit-slip.tsx';

export interface QualityProps {
  readonly source: SourceView;
  readonly onTarget: (target: Target) => void;
}

/** What to look at again in one table. Nothing in it was left out for any of this. */
export function Quality({ source, onTarget }: QualityProps) {
  const { view } = useWorkbench();
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
      <Sort
        title="Facets recorded, and what the measurements beside them say"
        count={quality.derivedFacets.length}
      >
        {quality.derivedFacets.map((one) => (
          <li key={one.attribute}>
            {one.label}: {agreementInWords(one)}.
          </li>
        ))}
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
      <DecidedRows source={source} />
      <Recorded filled={quality.filled} />
    </div>
  );
}

function recordersOf(
  source: SourceView,
  together: readonly RecorderDifference[] | undefined,
): readonly RecorderDifference[] {
  const mine = (together ?? []).filter(({ by, names }) => by === 'source' && names.includes(source.name));
  return [...source.quality.recorders, ...mine];
}
