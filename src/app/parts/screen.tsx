import type { ReactNode } from 'react';
import { Crossing } from './fringe.tsx';

/** The four parts of every screen, in reading order. */

export interface ScreenProps {
  readonly question: string;
  readonly lead?: string;
  readonly children: ReactNode;
}

export function ScreenFrame({ question, lead, children }: ScreenProps) {
  return (
    <main className="page" id="page" tabIndex={-1}>
      <div className="question stack tight">
        <h1>{question}</h1>
        {lead === undefined ? null : <p className="soft">{lead}</p>}
      </div>
      {children}
    </main>
  );
}

export type PartName = 'ask' | 'see' | 'say' | 'trace' | 'more';

export function Part({ name, title, children }: { name: PartName; title: string; children: ReactNode }) {
  return (
    <section className={`${name} sheet`} aria-label={title}>
      <h2 className="part-name">{title}</h2>
      {children}
    </section>
  );
}

/** The sentence fit to print, and what must be said with it. */
export function Said({ sentence, cautions }: { sentence: string; cautions: readonly string[] }) {
  return (
    <div className="stack">
      <p className="sentence">{sentence}</p>
      <Cautions cautions={cautions} />
    </div>
  );
}

export function Cautions({ cautions }: { cautions: readonly string[] }) {
  if (cautions.length === 0) return null;
  return (
    <ul className="cautions" aria-label="Cautions">
      {cautions.map((caution) => (
        <li key={caution}>
          <Crossing colour="var(--copper)" />
          {caution}
        </li>
      ))}
    </ul>
  );
}

export function FaultNote({ text, children }: { text: string; children?: ReactNode }) {
  return (
    <div className="fault stack" role="alert">
      <p>{text}</p>
      {children}
    </div>
  );
}
