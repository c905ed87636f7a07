/** An attribute by its name, with how many of the records have it. */
export function AttributeCount(props: {
  readonly label: string;
  readonly filled: number | undefined;
  readonly records: number;
}) {
  return (
    <>
      {props.label}{' '}
      <span className="soft small">
        {props.filled} of {props.records}
      </span>
    </>
  );
}
