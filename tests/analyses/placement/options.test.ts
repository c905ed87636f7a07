import { everyOption } from '../every-option.ts';

everyOption('placement');
