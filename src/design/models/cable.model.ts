import { Field, Float, ObjectType } from '@nestjs/graphql';

/** A piece of surface as its cable was measured. */
@ObjectType({ description: 'A piece of surface (landing, tread, leg of a walk) as its cable was measured.' })
export class CableField {
  @Field(() => String, { description: 'Key of the area, with a number where it has several pieces.' })
  readonly key!: string;

  @Field(() => Float, { description: 'Cable in it, ft.' })
  readonly feet!: number;

  @Field(() => Float, { nullable: true, description: 'Surface over length, in; null where no cable lies.' })
  readonly meanSpacing!: number | null;

  @Field(() => Float, { description: 'Power, W/ft².' })
  readonly wattsPerSquareFoot!: number;

  @Field(() => Float, { description: 'Widest circle without cable inside the setbacks, in.' })
  readonly widestGap!: number;
}

/** A heating set on the plan, measured from its path. */
@ObjectType({ description: 'A heating set on the plan, measured from its path.' })
export class CableLayout {
  @Field(() => String, { description: 'Key of the heating set.' })
  readonly setKey!: string;

  @Field(() => String, { description: 'Name of the heating set.' })
  readonly setName!: string;

  @Field(() => Boolean, {
    description: 'Whether the measured set was laid; otherwise the figures are of another that would fit.',
  })
  readonly asMeasured!: boolean;

  @Field(() => Float, {
    nullable: true,
    description: 'Label of the set that was laid, ft; null when none could be.',
  })
  readonly feet!: number | null;

  @Field(() => Float, { nullable: true, description: 'Least distance on centres of two runs, in.' })
  readonly closest!: number | null;

  @Field(() => Float, { nullable: true, description: 'Radius of the tightest bend, in.' })
  readonly tightestBend!: number | null;

  @Field(() => Float, { nullable: true, description: 'From the sleeve to the cold joint, in.' })
  readonly coldLeadOutside!: number | null;

  @Field(() => [CableField], { description: 'Its pieces of surface in turn.' })
  readonly fields!: readonly CableField[];
}
