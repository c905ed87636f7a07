import { useEffect, useState } from 'react';
import type { GlossaryWord } from '../../analyses/glossary-word.ts';

/** A structure as a schema beside its word; what it is drawn by is fetched when the words are first opened. */
export function WordSchema({ of, word }: { of: NonNullable<GlossaryWord['drawn']>; word: string }) {
  const [svg, setSvg] = useState<string | null>(null);
  useEffect(() => {
    let left = false;
    import('./schema-svg.ts').then(({ schemaSvg }) => {
      if (!left) setSvg(schemaSvg(of.structure, of.facets));
    });
    return () => {
      left = true;
    };
  }, [of]);
  return svg === null ? null : (
    <img
      className="word-schema"
      src={`data:image/svg+xml,${encodeURIComponent(svg)}`}
      alt={`Schema of ${word}`}
    />
  );
}
