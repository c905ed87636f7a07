import { z } from 'zod';

/** At which level of a hierarchy kinds are counted, where catalogues of different depth are compared. */
export const levelOption = z
  .union([z.enum(['common', 'recorded']), z.array(z.string().min(1)).min(1)])
  .default('common')
  .meta({
    title: 'Level of kinds',
    description:
      'common: the finest level that everything compared records; recorded: the words as they stand; or the terms to count at',
  });
