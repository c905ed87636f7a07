import type { Figure } from '../contract.ts';
import type { ChronologyFound } from './found.ts';
import { phasesFigure } from './phases-figure.ts';
import { placesFigure } from './places-figure.ts';
import { countsFigure, kindsFigure } from './slices-figures.ts';
import { spansFigure } from './spans-figure.ts';

export function chronologyFigures(found: ChronologyFound): Readonly<Record<string, Figure>> {
  if (found.all.n === 0) return {};
  const kinds = kindsFigure(found);
  const places = placesFigure(found);
  const phases = phasesFigure(found);
  return {
    ...(kinds === null ? {} : { kinds }),
    counts: countsFigure(found),
    ...(found.spans.places.length === 0 ? {} : { spans: spansFigure(found, 'places') }),
    ...(found.spans.kinds.length === 0 ? {} : { kindSpans: spansFigure(found, 'kinds') }),
    ...(places === null ? {} : { places }),
    ...(phases === null ? {} : { phases }),
  };
}
