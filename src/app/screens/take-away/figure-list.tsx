import { printBehind } from '../../../analyses/phrasing.ts';
import type { Results } from '../../../study/results/results.ts';
import { fileStem } from '../../files.ts';
import { FigureFiles } from '../../parts/pictures/figure.tsx';
import { Said } from '../../parts/screen.tsx';

/** Every figure of the study with its answer, each to be saved for print. */
export function FigureList({ results, stem }: { results: Results; stem: string }) {
  const entries = Object.entries(results.analyses);
  if (entries.length === 0)
    return (
      <p>The study asks no analysis yet: look at Kinship or place a find, and keep what you want to print.</p>
    );
  return (
    <div className="stack wide">
      {entries.map(([id, result]) => (
        <div key={id} className="stack tight">
          <h3>{result.title}</h3>
          <Said words={{ ...result.words, unless: [] }} />
          <p className="small soft">{printBehind(result.n, results.study.witness)}</p>
          {Object.entries(result.figures).map(([name, figure]) => (
            <div className="line" key={name}>
              <span className="small">{name}</span>
              <FigureFiles
                figure={figure}
                name={`${stem}.${id}.${fileStem(name)}`}
                of={`the figure ${name} of ${id}`}
              />
            </div>
          ))}
        </div>
      ))}
    </div>
  );
}
