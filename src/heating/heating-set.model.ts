import { Field, Float, GraphQLISODateTime, ID, Int, ObjectType } from '@nestjs/graphql';

/** The heating cable as delivered: one uncut cable with its label, cold lead and sensor lead. */
@ObjectType({ description: 'One uncut heating cable as delivered, with its label values and its cold lead.' })
export class HeatingSet {
  @Field(() => ID, { description: 'Id of the heating set.' })
  readonly id!: string;

  @Field(() => String, { description: 'Key within its job.' })
  readonly key!: string;

  @Field(() => String, { description: 'What it is called on site.' })
  readonly name!: string;

  @Field(() => Float, { description: 'Power on the label, W.' })
  readonly watts!: number;

  @Field(() => Float, { description: 'Potential on the label, V.' })
  readonly volts!: number;

  @Field(() => Float, { description: 'Resistance on the label, Ω.' })
  readonly ohms!: number;

  @Field(() => Float, { description: 'Temperature at which the label resistance holds, °F.' })
  readonly labelTempF!: number;

  @Field(() => Float, { description: 'Length of the heating cable, ft. It is never cut.' })
  readonly heatedFeet!: number;

  @Field(() => Float, { description: 'Length of the cold lead, ft.' })
  readonly coldLeadFeet!: number;

  @Field(() => Int, { description: 'Days the bed cures before the set may be energised.' })
  readonly cureDays!: number;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When it was delivered; before that the values are those of the design.',
  })
  readonly receivedAt!: Date | null;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}
