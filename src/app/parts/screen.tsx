import type { ReactNode } from 'react';
import type { Answer } from '../../analyses/contract.ts';
import { printTurn } from '../../analyses/phrasing.ts';
import { useWorkbench } from '../state/workbench.tsx';
import { Crossing } from './fringe.tsx';
import { KeepBar } from './keep-bar.tsx';

/** The four parts of every screen, in reading order. */

export interface ScreenProps {
  readonly question: string;
  readonly lead?: string;
  readonly children: ReactNode;
}

export function ScreenFrame({ question, lead, children }: ScreenProps) {
  const { screen } = useWorkbench();
  return (
    <main className="page" id="page" tabIndex={-1}>
      <div className="question stack tight">
        <h1>{question}</h1>
        {lead === undefined ? null : <p className="soft">{lead}</p>}
      </div>
      {screen === 'take-away' ? null : <KeepBar key={screen} screen={screen} />}
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

/** The verdict, its evidence, what would change it and what would settle it. */
export function Said({ words }: { words: Answer }) {
  return (
    <div className="stack said">
      <p className="sentence">{words.answer}</p>
      <Evidence because={words.because} />
      <Turns words={words} />
    </div>
  );
}

function Evidence({ because }: Pick<Answer, 'because'>) {
  if (because.length === 0) return null;
  return (
    <ul className="because" aria-label="Because">
      {because.map((reason) => (
        <li key={reason}>{reason}</li>
      ))}
    </ul>
  );
}

/** What would change the verdict, the worst in sight and the rest one step away, and what would settle it. */
function Turns({ words: { unless, next = [] } }: { words: Answer }) {
  const [worst, ...rest] = unless;
  return (
    <>
      {worst === undefined ? null : (
        <div className="stack tight">
          <h3 className="small">What would change this</h3>
          <Cautions cautions={[printTurn(worst)]} />
          {rest.length === 0 ? null : (
            <details>
              <summary className="small">{rest.length} more</summary>
              <Cautions cautions={rest.map(printTurn)} />
            </details>
          )}
        </div>
      )}
      {next.length === 0 ? null : (
        <div className="stack tight">
          <h3 className="small">What would settle it</h3>
          <ul className="next">
            {next.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}

function Cautions({ cautions }: { cautions: readonly string[] }) {
  return (
    <ul className="cautions" aria-label="What would change this">
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
