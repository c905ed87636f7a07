import { createHash } from 'node:crypto';
import type { FileForm } from './text.ts';

/** A file of the demo as a resource of a Data Package 2.0 (datapackage.org, Table Dialect, Table Schema). */
export interface Resource {
  readonly file: string;
  readonly description: string;
  readonly form: FileForm;
  readonly bytes: Uint8Array;
  /** Field names in order. */
  readonly fields: readonly string[];
  /** Rows that the header takes up, 1 = first. */
  readonly headerRows: readonly number[];
  /** Fields that hold nothing but numbers. */
  readonly numbers?: readonly string[];
}

export function packageDescription(resources: readonly Resource[]): unknown {
  return {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    name: 'othmarel-coast',
    title: 'Fabrics of the Othmarel coast (an invented place)',
    description:
      'Invented data: no such coast, sites, finds or recorders exist. Five untidy catalogues, an assemblage table, a table of hard cases and the truth behind the five.',
    version: '1.0.0',
    licenses: [
      {
        name: 'CC0-1.0',
        title: 'CC0 1.0 Universal',
        path: 'https://creativecommons.org/publicdomain/zero/1.0/',
      },
    ],
    resources: resources.map(described),
  };
}

function described({ file, description, form, bytes, fields, headerRows, numbers = [] }: Resource): unknown {
  return {
    name: file.replace(/\.csv$/, ''),
    type: 'table',
    path: file,
    description,
    format: 'csv',
    mediatype: 'text/csv',
    encoding: form.encoding === 'windows-1252' ? 'windows-1252' : 'utf-8',
    bytes: bytes.length,
    hash: `sha256:${createHash('sha256').update(bytes).digest('hex')}`,
    dialect: {
      delimiter: form.delimiter,
      lineTerminator: form.lineEnd,
      ...(headerRows.length === 1 && headerRows[0] === 1 ? {} : { headerRows, headerJoin: ' ' }),
    },
    schema: {
      fields: fields.map((name) => ({ name, type: numbers.includes(name) ? 'number' : 'string' })),
      missingValues: [''],
    },
  };
}
