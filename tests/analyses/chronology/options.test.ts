import { everyOption } from '../every-option.ts';

everyOption('chronology');
