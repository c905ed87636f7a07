import { z } from 'zod';

export const facetLimits = z
  .strictObject({
    openness: z
      .strictObject({
        close: z
          .number()
          .min(0)
          .exactOptional()
          .meta({ description: 'Gap over row width up to which rows are close' }),
        open: z
          .number()
          .gt(0)
          .exactOptional()
          .meta({ description: 'Gap over row width above which rows are open' }),
        possibleRowWidth: z
          .tuple([z.number().gt(0), z.number().gt(0)])
          .exactOptional()
          .meta({
            description: 'Row widths in mm that are taken as possible where none was recorded',
          }),
      })
      .refine(({ close = 0, open = Number.POSITIVE_INFINITY }) => close <= open, {
        message: 'rows would be close and open at once',
        params: { mend: 'let "close" be at most "open"' },
      })
      .exactOptional(),
    face: z
      .strictObject({
        balanced: z.number().min(1).exactOptional().meta({
          description: 'The denser system over the other, up to which a weave is balanced',
        }),
        faced: z
          .number()
          .gt(1)
          .exactOptional()
          .meta({ description: 'From which on one system hides the other' }),
      })
      .refine(({ balanced = 1, faced = Number.POSITIVE_INFINITY }) => balanced <= faced, {
        message: 'a weave would be balanced and faced at once',
        params: { mend: 'let "balanced" be at most "faced"' },
      })
      .exactOptional(),
  })
  .meta({
    description:
      'Where openness and face part when they are derived, and when what was recorded is checked against the measurements; what is left out stays as proposed',
  });
