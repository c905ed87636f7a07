import { z } from 'zod';
import { levelOption } from '../shared/level/option.ts';
import { coefficientOption } from '../shared/options/coefficient.ts';
import { attributeId, fileName, groupingId, kindsId } from '../shared/options/shared.ts';

export const mapOptions = z.strictObject({
  assemblages: groupingId().default('site').meta({
    title: 'Places',
    description: 'What is drawn as one place: sites, or "assemblage" for site and phase as one.',
  }),
  of: kindsId().meta({
    title: 'Kinds',
    description: 'The attribute of kinds in whose counts places are alike, such as structure or fibre.',
  }),
  level: levelOption,
  coefficient: coefficientOption,
  to: z.string().min(1).exactOptional().meta({
    title: 'Likeness to',
    description: 'The place to which all others are set; the one with the most items where not named.',
  }),
  share: z.string().min(1).exactOptional().meta({
    title: 'Share of',
    description: 'The kind whose share colours the places; the one that differs most where not named.',
  }),
  group: groupingId().default('region').meta({
    title: 'Groups',
    description:
      'What the symbols stand for on the map by groups, such as region or tradition; left out where not recorded.',
  }),
  places: z.tuple([attributeId(), attributeId()]).exactOptional().meta({
    title: 'Coordinates',
    description:
      'Two attributes that say where a place lies (east, north); latitude and longitude where not named.',
  }),
  coast: fileName().exactOptional().meta({
    title: 'Coast and borders',
    description: 'A GeoJSON file of your own in the same coordinates, drawn as thin lines beneath.',
  }),
  confidence: z.number().gt(0.5).lt(1).default(0.95).meta({
    title: 'Confidence',
    description: 'Of the lines drawn, at most 1 minus it are expected to be of chance.',
  }),
  deals: z.int().min(99).max(99_999).default(9999).meta({
    title: 'Deals',
    description: 'How often the items are dealt anew to the places to see what chance would do.',
  }),
});

export type MapOptions = z.output<typeof mapOptions>;
