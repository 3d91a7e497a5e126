import { Field, Float, GraphQLISODateTime, ID, InputType, Int } from '@nestjs/graphql';
import { z } from 'zod';
import { clientKey, KeyedInput } from '../platform/graphql/client-key.js';
import { ProtectionInput, protectionSchema } from './protection/protection.input.js';

@InputType({ description: 'Records concrete, grout or mortar as it was placed.' })
export class RecordPlacementInput extends KeyedInput {
  @Field(() => ID, { description: 'The phase that placed it.' })
  readonly phaseId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision the phase was read at; checked when given.' })
  readonly revision?: number | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was placed; now when left out.' })
  readonly placedAt?: Date | null;

  @Field(() => String, { description: 'What was placed: concrete, grout or mortar.' })
  readonly material!: string;

  @Field(() => Float, { description: 'Least dimension of the section, in.' })
  readonly sectionInches!: number;

  @Field(() => Float, { description: 'Temperature as placed, °F.' })
  readonly placedTempF!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'Strength it must reach, psi; left out, what its cure hold point asks for.',
  })
  readonly requiredPsi?: number | null;

  @Field(() => Boolean, {
    nullable: true,
    description:
      'Whether an accelerator is in the mixture; no when left out. The estimate counts it, cautiously.',
  })
  readonly accelerated?: boolean | null;

  @Field(() => [String], {
    nullable: true,
    description:
      'What keeps it warm: blanket, enclosure, heater; nothing when left out. Give `protectionPlan` to say how much of it.',
  })
  readonly protection?: string[] | null;

  @Field(() => ProtectionInput, {
    nullable: true,
    description: 'How it is kept warm; goes before `protection`.',
  })
  readonly protectionPlan?: ProtectionInput | null;
}

@InputType({ description: 'Records a temperature read in a placement.' })
export class RecordTemperatureInput extends KeyedInput {
  @Field(() => ID, { description: 'The placement.' })
  readonly placementId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision it was read at; checked when given.' })
  readonly revision?: number | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was read; now when left out.' })
  readonly at?: Date | null;

  @Field(() => Float, { description: 'Temperature of the concrete or mortar, °F.' })
  readonly concreteF!: number;

  @Field(() => Float, { nullable: true, description: 'Temperature of the air beside it, °F.' })
  readonly airF?: number | null;
}

const between = (least: number, most: number, unit: string) =>
  z
    .number()
    .min(least, { error: `must be ${least} to ${most} ${unit}` })
    .max(most, { error: `must be ${least} to ${most} ${unit}` });

/** Schema of a placement. */
export const placementSchema = z.object({
  clientKey,
  placedAt: z.date().nullish(),
  material: z.enum(['concrete', 'grout', 'mortar'], { error: 'must be concrete, grout or mortar' }),
  sectionInches: between(0.25, 120, 'in'),
  placedTempF: between(32, 120, '°F; what is colder than 32 °F is not placed'),
  requiredPsi: between(0, 10_000, 'psi').nullish(),
  accelerated: z
    .boolean()
    .nullish()
    .transform((given) => given ?? false),
  protection: z
    .array(z.enum(['blanket', 'enclosure', 'heater'], { error: 'must be blanket, enclosure or heater' }))
    .max(3)
    .nullish()
    .transform((given) => given ?? []),
  protectionPlan: protectionSchema.nullish(),
});

/** Schema of a temperature. */
export const temperatureSchema = z.object({
  clientKey,
  at: z.date().nullish(),
  concreteF: between(-40, 212, '°F'),
  airF: between(-70, 140, '°F').nullish(),
});
