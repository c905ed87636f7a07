/** The one helper through which text of a source enters a figure. */
export { escapeText } from './style.ts';
