import { Field, Float, GraphQLISODateTime, ID, ObjectType } from '@nestjs/graphql';
import { ReadingStage } from '../inspections/inspections.face.js';

/** One resistance and insulation test of a heating set. */
@ObjectType({ description: 'One resistance and insulation test of a heating set.' })
export class CableReading {
  @Field(() => ID, { description: 'Id of the reading.' })
  readonly id!: string;

  @Field(() => ReadingStage, { description: 'When in the work it was taken.' })
  readonly stage!: ReadingStage;

  @Field(() => GraphQLISODateTime, { description: 'When it was taken.' })
  readonly at!: Date;

  @Field(() => Float, { description: 'Resistance between the conductors, Ω.' })
  readonly ohms!: number;

  @Field(() => Float, { description: 'Insulation resistance to the shield, MΩ.' })
  readonly megaohms!: number;

  @Field(() => Float, { description: 'Voltage of the insulation test, V.' })
  readonly testVolts!: number;

  @Field(() => Float, { description: 'Temperature of the cable, °F.' })
  readonly cableTempF!: number;

  @Field(() => Boolean, {
    description: 'Whether it is within all limits; a reading that is not releases nothing.',
  })
  readonly accepted!: boolean;
}
