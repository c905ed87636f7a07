import { z } from 'zod';
import { levelOption } from '../shared/level/option.ts';
import { coefficientOption } from '../shared/options/coefficient.ts';
import { comparisonOptions } from '../shared/options/comparison.ts';
import { attributeId, groupingId, kindsId } from '../shared/options/shared.ts';

const { of: comparedAttributes, ...comparison } = comparisonOptions;

export const standingOptions = z.strictObject({
  site: z.string().min(1).meta({
    title: 'The site',
    description: 'Its label, as it stands among those of "among".',
  }),
  among: groupingId().default('site').meta({
    title: 'Among',
    description: 'What it is one of: sites, phases, or "assemblage" for site and phase as one.',
  }),
  confineTo: z.array(groupingId()).max(3).default([]).meta({
    title: 'Its region',
    description:
      'Attributes such as region or period: only items that share the commonest value of the site are compared. None named = all.',
  }),
  of: kindsId().meta({
    title: 'Kinds',
    description: 'The attribute of kinds in whose counts assemblages are compared.',
  }),
  level: levelOption,
  coefficient: coefficientOption,
  attributes: comparedAttributes,
  ...comparison,
  sameWithin: z.array(attributeId()).max(4).default(['preservation']).meta({
    title: 'Like with like',
    description:
      'Attributes of kinds within whose commonest value at the site the comparison is made once more, such as preservation or recovery.',
  }),
  beside: z
    .array(attributeId())
    .max(12)
    .default(['fibre', 'density1', 'density2', 'rowSpacing', 'length', 'width', 'preservation'])
    .meta({
      title: 'Beside the others',
      description:
        'Attributes in which the site is drawn beside all others together, after the kinds; those not recorded are passed over.',
    }),
  places: z.tuple([attributeId(), attributeId()]).exactOptional().meta({
    title: 'Places',
    description:
      'Two attributes that say where an assemblage lies (east, north); latitude and longitude where not named.',
  }),
  nearest: z.int().min(1).max(25).default(3).meta({
    title: 'Nearest items',
    description:
      'An item is at home elsewhere when most of this many nearest items are of other assemblages.',
  }),
  confidence: z.number().gt(0.5).lt(1).default(0.95).meta({
    title: 'Confidence',
    description: 'Confidence of intervals; a p of at most 1 minus it is called a difference.',
  }),
  resamples: z.int().min(199).max(19_999).default(999).meta({
    title: 'Resamples',
    description: 'Draws of items for each interval and for the cloud on the map.',
  }),
  relabellings: z.int().min(99).max(99_999).default(1999).meta({
    title: 'Relabellings',
    description: 'Random ways to deal items or assemblages where not all can be tried.',
  }),
});

export type StandingOptions = z.output<typeof standingOptions>;
