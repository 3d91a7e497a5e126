import { Field, Float, ID, InputType, Int, registerEnumType } from '@nestjs/graphql';
import { z } from 'zod';
import { clientKey, KeyedInput } from '../../platform/graphql/client-key.js';
import { ProtectionInput, protectionSchema } from '../protection/protection.input.js';

/** The two ways with a placement that meets cold weather. */
export const ProtectionBranch = { protect: 'protect', wait: 'wait' } as const;
export type ProtectionBranch = (typeof ProtectionBranch)[keyof typeof ProtectionBranch];

registerEnumType(ProtectionBranch, {
  name: 'ProtectionBranch',
  description: 'The two ways with a placement that meets cold weather.',
  valuesMap: {
    protect: { description: 'Place it now, under blankets or in a heated enclosure.' },
    wait: { description: 'Wait for a window in which it may be placed and cure without protection.' },
  },
});

@InputType({ description: 'What is to be placed, for a comparison of protecting it and waiting.' })
export class ProtectOrWaitInput {
  @Field(() => ID, { description: 'The phase that is to place it; it has not started.' })
  readonly phaseId!: string;

  @Field(() => String, {
    nullable: true,
    description: 'Concrete, grout or mortar; by the hatch of the phase when left out.',
  })
  readonly material?: string | null;

  @Field(() => Float, {
    nullable: true,
    description:
      'Least dimension of the section, in; 10 for concrete, 8 for grout, 1.5 for mortar when left out.',
  })
  readonly sectionInches?: number | null;

  @Field(() => Float, { nullable: true, description: 'Temperature as placed, °F; 60 when left out.' })
  readonly placedTempF?: number | null;

  @Field(() => Boolean, { nullable: true, description: 'Whether an accelerator is in it; no when left out.' })
  readonly accelerated?: boolean | null;

  @Field(() => ProtectionInput, {
    nullable: true,
    description:
      'The protection to compare with; a tent at 60 °F for 12 h, then a layer of blanket, when left out.',
  })
  readonly protectionPlan?: ProtectionInput | null;
}

@InputType({ description: 'Chooses one of the two ways; plan, equipment and reminders follow.' })
export class ChooseProtectionInput extends KeyedInput {
  @Field(() => ProtectOrWaitInput, { description: 'What is to be placed, as it was compared.' })
  readonly pour!: ProtectOrWaitInput;

  @Field(() => ProtectionBranch, { description: 'Which way.' })
  readonly branch!: ProtectionBranch;

  @Field(() => Int, { nullable: true, description: 'Revision the phase was read at; checked when given.' })
  readonly revision?: number | null;

  @Field(() => String, { nullable: true, description: 'Why, for the record.' })
  readonly reason?: string | null;
}

const between = (least: number, most: number, unit: string) =>
  z
    .number()
    .min(least, { error: `must be ${least} to ${most} ${unit}` })
    .max(most, { error: `must be ${least} to ${most} ${unit}` });

/** Schema of what is to be placed. */
export const pourSchema = z.object({
  material: z.enum(['concrete', 'grout', 'mortar'], { error: 'must be concrete, grout or mortar' }).nullish(),
  sectionInches: between(0.25, 120, 'in').nullish(),
  placedTempF: between(32, 120, '°F').nullish(),
  accelerated: z.boolean().nullish(),
  protectionPlan: protectionSchema.nullish(),
});

/** What is to be placed, checked. */
export type GivenPour = z.infer<typeof pourSchema>;

/** Schema of a choice. */
export const choiceSchema = z.object({
  clientKey,
  pour: pourSchema,
  reason: z.string().trim().max(500, { error: 'has at most 500 letters' }).nullish(),
});
