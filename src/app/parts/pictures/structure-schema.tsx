import type { DrawingView } from '../../engine/views/records.ts';

/** Which element passes over which in a structure: said to be a schema, with what it had to choose. */
export function StructureSchema({ drawing, of }: { drawing: DrawingView; of: string }) {
  const source = `data:image/svg+xml,${encodeURIComponent(drawing.svg)}`;
  return (
    <figure className="schema">
      <img src={source} alt={`Schema of ${drawing.title}. ${drawing.says}`} />
      <figcaption className="small soft">
        {drawing.title}: a schema, not {of}.{drawing.notes.map((note) => ` ${note}`).join('')}
      </figcaption>
    </figure>
  );
}
