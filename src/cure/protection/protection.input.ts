import { Field, Float, InputType, Int } from '@nestjs/graphql';
import { z } from 'zod';
import { BLANKET_R, type ProtectionSpec, TENT_F, TENT_HOURS } from './protection-spec.js';

@InputType({ description: 'How a placement is kept warm.' })
export class ProtectionInput {
  @Field(() => Int, { nullable: true, description: 'Layers of insulated blanket on it; none when left out.' })
  readonly blanketLayers?: number | null;

  @Field(() => Float, {
    nullable: true,
    description:
      'Thermal resistance of one layer, h·ft²·°F/Btu; 4 when left out (common practice, no source).',
  })
  readonly blanketR?: number | null;

  @Field(() => Boolean, {
    nullable: true,
    description: 'Whether it stands in a heated enclosure; no when left out.',
  })
  readonly enclosure?: boolean | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Temperature inside the enclosure, °F; 60 when left out (common practice, no source).',
  })
  readonly enclosureF?: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Hours from placing in which it is heated; 12 when left out (rule of the trade, no source).',
  })
  readonly heatHours?: number | null;
}

const between = (least: number, most: number, unit: string) =>
  z
    .number()
    .min(least, { error: `must be ${least} to ${most} ${unit}` })
    .max(most, { error: `must be ${least} to ${most} ${unit}` });

/** Schema of a protection. */
export const protectionSchema = z
  .object({
    blanketLayers: between(0, 6, 'layers').nullish(),
    blanketR: between(0.1, 30, 'h·ft²·°F/Btu').nullish(),
    enclosure: z.boolean().nullish(),
    enclosureF: between(33, 100, '°F').nullish(),
    heatHours: between(0, 336, 'h').nullish(),
  })
  .transform(({ blanketLayers, blanketR, enclosure, enclosureF, heatHours }): ProtectionSpec => {
    const tent = enclosure ?? false;
    return {
      blanketLayers: blanketLayers ?? 0,
      blanketR: blanketR ?? BLANKET_R.value,
      enclosureF: tent ? (enclosureF ?? TENT_F.value) : null,
      heatHours: tent ? (heatHours ?? TENT_HOURS.value) : 0,
    };
  });
