import { useState } from 'react';
import { ListBox, ListBoxItem } from 'react-aria-components';
import { type ClaimVerdict, VERDICTS } from '../../../analyses/claims/found.ts';
import { quantitySaid } from '../../../analyses/claims/reading/terms.ts';
import type { ClaimsView, JudgedView } from '../../engine/views/claims.ts';
import { Toggles } from '../../parts/controls.tsx';
import type { Draft } from './claims-list.ts';
import { VerdictMark } from './verdict-mark.tsx';

/** One line of the list: a figure with its verdict, or a row that cannot be read yet. */
export interface ListLine {
  readonly key: string;
  /** Row of the form; null for a cell of a printed table. */
  readonly draft: number | null;
  /** Printed table that the figure is a cell of. */
  readonly table: string | null;
  readonly id: string;
  readonly printed: string;
  readonly what: string;
  readonly place: string;
  readonly judged: JudgedView | null;
  readonly lacks: string;
}

/** What each row of the form and each printed table came to, in their order. */
export function listLines(drafts: readonly Draft[], answer: ClaimsView | null): readonly ListLine[] {
  const judged = new Map((answer?.judged ?? []).map((one) => [one.id, one]));
  const ofFigure = (id: string, key: string, draft: number | null, table: string | null): ListLine[] => {
    const one = judged.get(id);
    if (one === undefined) return [];
    const { printed, quantity: what, place } = one;
    return [{ key, draft, table, id, printed, what, place, judged: one, lacks: '' }];
  };
  const claimed = drafts.flatMap((draft, i): ListLine[] => {
    const line = answer?.lines[i];
    const current = line !== undefined && line.id === (draft.id === '' ? line.id : draft.id);
    if (current && line.figures.length > 0) {
      const lines = line.figures.flatMap((id, part) => ofFigure(id, `${i}:${part}`, i, null));
      if (lines.length > 0) return lines;
    }
    const { id, printed, quantity: what, place } = draft;
    const lacks = lacking(draft, line);
    return [{ key: `${i}:0`, draft: i, table: null, id, printed, what, place, judged: null, lacks }];
  });
  const cells = (answer?.printed ?? []).flatMap(({ file, figures }) =>
    figures.flatMap((id) => ofFigure(id, `${file}:${id}`, null, file)),
  );
  return [...claimed, ...cells];
}

function lacking(draft: Draft, line: ClaimsView['lines'][number] | undefined): string {
  if (draft.printed === '') return 'Type the figure as it stands.';
  if (draft.quantity === '') return 'Say what the figure is.';
  return line?.fault?.text ?? 'being checked';
}

export interface FigureListProps {
  readonly lines: readonly ListLine[];
  readonly counts: ClaimsView['counts'] | null;
  readonly chosen: string | null;
  readonly onChoose: (key: string) => void;
}

type Shown = 'all' | ClaimVerdict;

/** All figures with their verdicts; one is chosen, and its working opens beside the list. */
export function FigureList({ lines, counts, chosen, onChoose }: FigureListProps) {
  const [wanted, setWanted] = useState<Shown>('all');
  const present = VERDICTS.filter((verdict) => (counts?.[verdict] ?? 0) > 0);
  const shown: Shown = wanted === 'all' || present.includes(wanted) ? wanted : 'all';
  const rows = lines.filter(({ judged }) => shown === 'all' || judged?.verdict === shown);
  return (
    <div className="stack">
      {present.length < 2 ? null : (
        <Toggles
          label="Which verdict"
          value={shown}
          options={[
            { id: 'all', label: `all ${lines.length}` },
            ...present.map((verdict) => ({ id: verdict, label: `${verdict} ${counts?.[verdict] ?? 0}` })),
          ]}
          onChange={(id) => setWanted(id as Shown)}
        />
      )}
      <ListBox
        className="verdicts"
        aria-label="Printed figures"
        selectionMode="single"
        selectionBehavior="replace"
        disallowEmptySelection
        selectedKeys={chosen === null ? [] : [chosen]}
        onSelectionChange={(keys) => {
          if (keys === 'all') return;
          const [key] = keys;
          if (key !== undefined) onChoose(String(key));
        }}
      >
        {rows.map((line) => (
          <ListBoxItem
            key={line.key}
            id={line.key}
            className="verdict"
            textValue={`${line.id} ${line.what} ${line.printed}: ${line.judged?.says ?? line.lacks}`}
          >
            <VerdictMark verdict={line.judged?.verdict ?? null} />
            <span className="soft small verdict-id">{line.id}</span>
            <span className="verdict-print">
              <span className="small soft">{quantitySaid(line.what)}</span>{' '}
              <strong>{line.printed === '' ? '…' : line.printed}</strong>
              {line.place === '' ? null : <span className="small soft"> {line.place}</span>}
            </span>
            <span className="small verdict-says">{line.judged?.says ?? line.lacks}</span>
          </ListBoxItem>
        ))}
      </ListBox>
    </div>
  );
}
