/** Data frames and spreadsheets, for notebooks and the command line. Node only. */

export { readWorkbook, type SheetReading } from '../sources/formats/workbook.ts';
export type { NumberForm } from './columns.ts';
export { type Danfo, type DataFrame, type FrameValue, loadDanfo, type Series } from './danfo.ts';
export { toFrame } from './frame.ts';

export { gridAsCsv, spreadsheetToCsv } from './spreadsheet.ts';
export { writeWorkbook } from './write-workbook.ts';
