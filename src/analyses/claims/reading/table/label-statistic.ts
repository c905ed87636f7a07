import { type HeadReading, type Role, readHead } from './heads.ts';

/** A label parted into what it is of and what its line holds. */
export interface LabelStatistic {
  readonly of: string;
  readonly reading: HeadReading;
}

const HOLDS: ReadonlySet<Role> = new Set<Role>([
  'mean',
  'median',
  'sd',
  'se',
  'cv',
  'min',
  'max',
  'range',
  'iqr',
  'q1',
  'q3',
  'interval',
  'count',
  'share',
  'n',
]);

/** What is tried as "of, what": the last comma, colon or dash first, then brackets at the end. */
const PARTINGS: readonly RegExp[] = [
  /^(?<of>.+)(?:,|:|;|\s[-–—])\s+(?<what>[^,:;]+(?:[([][^)\]]*[)\]])?)$/u,
  /^(?<of>.+?),\s+(?<what>.+)$/u,
  /^(?<of>.+?)\s*[([](?<what>[^()[\]]*(?:[([][^)\]]*[)\]])?)[)\]]$/u,
];

/** "Mean age (SD)", "Median [IQR] spacing": the statistic comes first. */
const AHEAD =
  /^(?<first>mean|average|median|mittelwert|moyenne|médiane)\s+(?:of\s+|der\s+|des?\s+)?(?<of>\p{L}.*?)(?:\s*(?<second>[([][^)\]]+[)\]]))?$/iu;

/**
 * A label that ends in what its line holds: "Row spacing (mm), mean (SD)", "tabby (%)", "Early, n (%)"; or that
 * begins with it: "Mean age (SD)". Undefined for any other.
 */
export function labelStatistic(label: string): LabelStatistic | undefined {
  const plain = label.replaceAll(/\s+/g, ' ').trim();
  const ahead = statisticAhead(plain);
  if (ahead !== undefined) return ahead;
  for (const parting of PARTINGS) {
    const { of, what } = parting.exec(plain)?.groups ?? {};
    // One letter is a name more often than a statistic; n is none.
    if (of === undefined || what === undefined || (/^\p{L}$/u.test(what) && !/^n$/iu.test(what))) continue;
    const reading = readHead(what);
    if (reading !== undefined && HOLDS.has(reading.role)) return { of: of.trim(), reading };
  }
  return undefined;
}

function statisticAhead(label: string): LabelStatistic | undefined {
  const { first, of, second } = AHEAD.exec(label)?.groups ?? {};
  if (first === undefined || of === undefined || readHead(label) !== undefined) return undefined;
  const reading = readHead(`${first}${second === undefined ? '' : ` ${second}`}`);
  // "Mean spacing, mean (SD)" says it at its end.
  return reading === undefined || /[,:;]/.test(of) ? undefined : { of: of.trim(), reading };
}

/** Whether that is a statistic of readings, not a count or a share. */
export function isOfReadings({ reading: { role } }: LabelStatistic): boolean {
  return role !== 'count' && role !== 'share' && role !== 'n';
}
