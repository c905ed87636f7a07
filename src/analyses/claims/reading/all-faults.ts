import { InputError } from '../../../errors.ts';

/** All faults of a file as one, so that they are mended in one go; null for none. */
export function allFaults(faults: readonly InputError[], file: string): InputError | null {
  const [first, ...more] = faults;
  if (first === undefined) return null;
  if (more.length === 0) return first;
  const said = faults.map(({ what, where, mend }) => {
    const place = [
      ...(where.file === undefined || where.file === file ? [] : [where.file]),
      ...(where.row === undefined ? [] : [`row ${where.row}`]),
      ...(where.column === undefined ? [] : [`column "${where.column}"`]),
    ];
    return `${place.length === 0 ? '' : `${place.join(', ')}: `}${what} (${mend})`;
  });
  return new InputError(
    `${faults.length} faults: ${said.join('; ')}`,
    { file },
    'mend each of them, or empty its line to leave it out',
  );
}
