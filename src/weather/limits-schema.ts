import { z } from 'zod';
import { MARKS } from '../../shared/entry/source.js';
import { LIMIT_UNITS, type LimitMeasure } from '../../shared/weather/weather-limit.js';

const MEASURES = Object.keys(LIMIT_UNITS) as [LimitMeasure, ...LimitMeasure[]];

/** Figures that can be meant, in the unit of the measure: what lies outside is a slip of unit or key. */
const RANGES: Readonly<Record<LimitMeasure, readonly [number, number]>> = {
  temperature: [-60, 130],
  wind: [0, 150],
  gust: [0, 150],
  rainChance: [0, 100],
  rainAmount: [0, 10],
};

const measure = z.enum(MEASURES, { error: `must be one of ${MEASURES.join(', ')}` });
const words = (most: number) =>
  z
    .string({ error: 'must be a text' })
    .trim()
    .min(1, { error: 'must not be empty' })
    .max(most, { error: `has at most ${most} letters` });
const figure = z.number({ error: 'must be a number' });

const limit = z
  .strictObject({
    id: z
      .string({ error: 'must be a text' })
      .regex(/^[a-z0-9-]{1,40}$/, { error: 'must be 1 to 40 small letters, digits and hyphens' }),
    measure,
    stop: z.enum(['below', 'above'], { error: 'must be below or above' }),
    value: figure,
    inclusive: z.boolean({ error: 'must be true or false' }).default(false),
    aheadHours: z
      .number({ error: 'must be a number of hours' })
      .int({ error: 'must be whole hours' })
      .min(0, { error: 'must be 0 or more hours' })
      .max(72, { error: 'must be at most 72 hours' })
      .default(0),
    liftedBy: z.array(words(40)).max(8, { error: 'names at most 8 kinds of protection' }).default([]),
    and: z.strictObject({ measure, above: figure }).optional(),
    text: words(120),
    source: z.strictObject({
      mark: z.enum(MARKS as ['P', 'C', 'M', 'T'], { error: `must be one of ${MARKS.join(', ')}` }),
      text: words(300),
    }),
  })
  .superRefine((one, issues) => {
    const [low, high] = RANGES[one.measure];
    if (one.value >= low && one.value <= high) return;
    const unit = LIMIT_UNITS[one.measure];
    issues.addIssue({
      code: 'custom',
      path: ['value'],
      message: `must be ${low} to ${high} ${unit}; check the unit`,
    });
  });

/** The limits of one kind of work as a company edits them. */
export const limitsSchema = z
  .array(limit, { error: 'must be a list of limits' })
  .max(20, { error: 'has more than 20 limits' })
  .refine((list) => new Set(list.map(({ id }) => id)).size === list.length, {
    error: 'names an id twice; give every limit its own',
  });
