import { Field, Float, ObjectType } from '@nestjs/graphql';

/** Something to look at in a footing before concrete. */
@ObjectType({ description: 'Something to look at in the footing before concrete.' })
export class FootingItem {
  @Field(() => String, { description: 'Stable key.' })
  readonly key!: string;

  @Field(() => String, { description: 'What to look at.' })
  readonly text!: string;

  @Field(() => String, { description: 'Where it comes from, with the mark in words.' })
  readonly source!: string;
}

/** The footing under landing and steps. */
@ObjectType({ description: 'The footing under landing and steps.' })
export class DesignFooting {
  @Field(() => Float, { description: 'Width, in.' })
  readonly width!: number;

  @Field(() => Float, { description: 'Thickness, in.' })
  readonly thickness!: number;

  @Field(() => Float, { description: 'Bottom below finished grade, in.' })
  readonly bottom!: number;

  @Field(() => Float, { description: 'How deep frost goes, in.' })
  readonly frostDepth!: number;

  @Field(() => String, { description: 'Who says how deep frost goes.' })
  readonly frostSource!: string;

  @Field(() => String, { description: 'What concrete in the weather must be, with its source.' })
  readonly concrete!: string;

  @Field(() => [FootingItem], { description: 'What to look at before the pour, in the order of the work.' })
  readonly checklist!: readonly FootingItem[];
}
