/** Some of the wordings that stand in a column; nothing where it is empty. */
export function Examples({ of }: { readonly of: readonly string[] | undefined }) {
  if (of === undefined || of.length === 0) return null;
  return (
    <>
      It holds{' '}
      {of.map((example, i) => (
        <span key={example}>
          {i > 0 ? ' · ' : ''}
          <span className="quoted">{example}</span>
        </span>
      ))}
    </>
  );
}
