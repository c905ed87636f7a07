import { readFileSync } from 'node:fs';
import Papa from 'papaparse';

/** The planted truth of the demo, as datasets/scripts/make-demo.ts wrote it; read by papaparse, not by our reader. */

const demo = new URL('../../datasets/demo/', import.meta.url);

export const demoText = (file: string): string => readFileSync(new URL(file, demo), 'utf8');
export const demoBytes = (file: string): Uint8Array => new Uint8Array(readFileSync(new URL(file, demo)));

export interface TrueFragment {
  readonly fragment: string;
  readonly item: string;
  readonly file: string;
  readonly site: string;
  readonly phase: string;
  readonly tradition: string;
  readonly kind: string;
  readonly preservation: string;
  readonly fibre: string;
  /** "simple" or "diagonal" of a twining; "" where it does not apply. */
  readonly engagement: string;
  /** "present" or "absent". */
  readonly pile: string;
  /** "single" or "half-basket" of a tabby. */
  readonly grouping: string;
  readonly density1: string;
  readonly density2: string;
  readonly rowSpacing: string;
}

export const TRUTH: readonly TrueFragment[] = Papa.parse<TrueFragment>(demoText('truth.csv'), {
  header: true,
  skipEmptyLines: true,
}).data;

export interface Mess {
  readonly fragments: number;
  readonly items: number;
  readonly lost: readonly { readonly site: string; readonly kind: string; readonly items: number }[];
  readonly catalogues: Readonly<Record<string, Readonly<Record<string, number>>>>;
}

export const MESS = JSON.parse(demoText('mess.json')) as Mess;

/** One row an item. */
export const TRUE_ITEMS: readonly TrueFragment[] = [
  ...new Map(TRUTH.map((each) => [each.item, each])).values(),
];
