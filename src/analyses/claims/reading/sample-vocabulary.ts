import { BEFORE_LEVEL, INTERVAL_WORDS } from './interval-words.ts';
import { NUMBER } from './numbers.ts';
import type { Quantity } from './terms.ts';

/**
 * Words that name a figure of a sample in running text, in English, German, French, Italian, Spanish and Danish:
 * "M = 5.2, SD = 1.4, n = 20". Common practice of papers, no source.
 */
export const SAMPLE_WORDS: readonly (readonly [pattern: string, quantity: Quantity])[] = [
  [
    String.raw`(?:arithmetic )?(?:[Mm]ean|[Aa]verage|[Mm]ittelwert|MW|Mw|[Mm]oyenne|[Mm]edia|[Pp]romedio|[Gg]ennemsnit|[Mm]iddelværdi|x̄|M)(?: value)?`,
    'mean',
  ],
  [String.raw`(?:[Mm]edian|[Mm]édiane|[Mm]ediana|Mdn|Md|Me)`, 'median'],
  [
    String.raw`(?:S\.?D\.?|s\.?\s?d\.?|std\.? ?dev\.?|[Ss]tandard deviation|St\.?\s?Dev\.?|[Ss]tandardabw(?:eichung|\.)|StAbw\.?|[ÉéEe]cart[- ]type|ET|[Dd]eviazione standard|DS|[Dd]esviación (?:estándar|típica)|DE|[Ss]tandardafvigelse|σ|s)`,
    'sd',
  ],
  [
    String.raw`(?:S\.?E\.?M?\.?|s\.?\s?e\.?\s?m?\.?|[Ss]tandard error|std\.? ?error|[Ss]tandardfehler|[Ee]rreur[- ](?:type|standard)|[Ee]rrore standard|[Ee]rror estándar|EE|[Ss]tandardfejl)`,
    'se',
  ],
  [
    String.raw`(?:I\.?Q\.?R\.?|IQA|EIQ|RIC|[Ii]nterquartile range|[Qq]uartiles|[Ii]nterquartilsabstand|[Ii]ntervalle interquartile)`,
    'iqr',
  ],
  [String.raw`(?:C\.?V\.?|[Cc]oefficient of variation|VK)`, 'cv'],
  [
    String.raw`(?:[Rr]ange|[Ss]pannweite|[ÉéEe]tendue|[Ee]xtrêmes|[Rr]ango|[Ii]ntervallo(?! di)|[Cc]ampo di variazione|[Ss]pændvidde|[Vv]ariationsbreite|min\.?\s?[-–]\s?max\.?)`,
    'range',
  ],
  [String.raw`(?:[Mm]in(?:imum|imo)?\.?|[Mm]ínimo)`, 'min'],
  [String.raw`(?:[Mm]ax(?:imum)?\.?|[Mm]aks(?:imum)?\.?|[Mm]assimo|[Mm]áximo)`, 'max'],
  [
    String.raw`(?:(?:9[059](?:[.,]\d)?[-\s]*%[-\s]*)?${INTERVAL_WORDS}(?:\s?(?:${BEFORE_LEVEL})?9[059]\s?%)?)`,
    'interval',
  ],
  [String.raw`(?:[nN])`, 'n'],
];

/** Two ends, as they stand behind a word. */
export const ENDS = String.raw`(?:[\[(]${NUMBER}\s*(?:-|–|—|to|bis|à|a|til|;|,\s)\s*${NUMBER}[\])]|${NUMBER}\s*(?:-|–|—|to|bis|à|a|til|;)\s*${NUMBER})`;
