import { copyFileSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { freshFolder, ROOT } from '../cli/thrum.ts';

/** A study document as it is written, with the questions that it asks. */
export interface Document {
  analyses: { id: string; kind: string }[];
  brief?: string[];
}

/** Asked of the penguins beside what their study asks, so that nearly every kind of question meets material that is not ours. */
const MORE = [
  { id: 'differ', kind: 'contrast', of: ['bodyMass', 'flipperLength'], by: 'island', relabellings: 199 },
  { id: 'table', kind: 'crosstab', rows: 'island', columns: 'species' },
  { id: 'alike', kind: 'similarity', assemblages: 'island', of: 'species', resamples: 199 },
  { id: 'standing', kind: 'standing', site: 'Dream', among: 'island', of: 'species', resamples: 199 },
  {
    id: 'shares',
    kind: 'map',
    assemblages: 'island',
    of: 'species',
    places: ['beakLength', 'beakDepth'],
    deals: 99,
  },
  { id: 'types', kind: 'typology', rules: 'types.json', fold: 'island', resamples: 19, relabellings: 99 },
  { id: 'figures', kind: 'claims', file: 'claims.csv' },
];

const TYPES = {
  title: 'Short and long flippers',
  types: [
    { id: 'short', label: 'Short', when: { attribute: 'flipperLength', below: 206 } },
    { id: 'long', label: 'Long', when: { attribute: 'flipperLength', atLeast: 206 } },
  ],
};

/** 344 penguins, 152 of them of the kind Adelie: Horst, Hill & Gorman 2020, as in datasets/open/README.md. The third is wrong. */
const CLAIMS = `id,quantity,attribute,select,counted,printed
a,count,,,species in Adelie,152
b,mean,flipperLength,,,200.9
c,mean,flipperLength,species in Gentoo,,189.9
`;

/** Everything that the study in this folder names. */
export function bytesOf(folder: string): ReadonlyMap<string, Uint8Array> {
  return new Map(readdirSync(folder).map((name) => [name, new Uint8Array(readFileSync(join(folder, name)))]));
}

/** The open study of penguins in a folder of its own, with more questions; its tables lie beside it. */
export function openStudy(): { readonly folder: string; readonly document: Document } {
  const folder = freshFolder();
  for (const name of ['penguins.csv', 'penguins.profile.json'])
    copyFileSync(join(ROOT, 'datasets/open', name), join(folder, name));
  const document = JSON.parse(
    readFileSync(join(ROOT, 'datasets/open/penguins-study.json'), 'utf8'),
  ) as Document;
  document.analyses = [...document.analyses, ...MORE];
  writeFileSync(join(folder, 'types.json'), JSON.stringify(TYPES));
  writeFileSync(join(folder, 'claims.csv'), CLAIMS);
  writeFileSync(join(folder, 'study.json'), JSON.stringify(document));
  return { folder, document };
}
