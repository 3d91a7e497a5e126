import { Field, Float, GraphQLISODateTime, ID, InputType, Int } from '@nestjs/graphql';
import { ReadingStage } from '../inspections/inspections.face.js';
import { KeyedInput } from '../platform/graphql/client-key.js';

@InputType({ description: 'Receives a heating set: its label as delivered takes the place of the design.' })
export class ReceiveHeatingSetInput extends KeyedInput {
  @Field(() => ID, { description: 'The job it was delivered for.' })
  readonly jobId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision the set was read at; checked when given.' })
  readonly revision?: number | null;

  @Field(() => String, { description: 'Key of the set within its job.' })
  readonly key!: string;

  @Field(() => String, { nullable: true, description: 'Name; the one of the design when left out.' })
  readonly name?: string | null;

  @Field(() => Float, { description: 'Power on the label, W.' })
  readonly watts!: number;

  @Field(() => Float, { description: 'Potential on the label, V.' })
  readonly volts!: number;

  @Field(() => Float, { description: 'Resistance on the label, Ω.' })
  readonly ohms!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'Temperature at which the label resistance holds, °F; as designed when left out.',
  })
  readonly labelTempF?: number | null;

  @Field(() => Float, { description: 'Length of the heating cable, ft.' })
  readonly heatedFeet!: number;

  @Field(() => Float, { description: 'Length of the cold lead, ft.' })
  readonly coldLeadFeet!: number;

  @Field(() => Float, {
    nullable: true,
    description:
      'Resistance of one conductor of the cold lead, Ω/ft; 0 when the label counts the lead in; as designed when left out.',
  })
  readonly coldLeadOhmsPerFoot?: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Temperature coefficient of the heating conductor, per kelvin; as designed when left out.',
  })
  readonly tempCoefficient?: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Lower tolerance of the resistance as a fraction, such as -0.05; as designed when left out.',
  })
  readonly toleranceLow?: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Upper tolerance of the resistance as a fraction, such as 0.1; as designed when left out.',
  })
  readonly toleranceHigh?: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Least insulation resistance, MΩ; as designed when left out.',
  })
  readonly minMegaohms?: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Voltage of the insulation test by its instructions, V; as designed when left out.',
  })
  readonly insulationVolts?: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Least bending radius, in; as designed when left out.',
  })
  readonly minBendInches?: number | null;

  @Field(() => Int, {
    nullable: true,
    description: 'Days the bed cures before the set may be energised; as designed when left out.',
  })
  readonly cureDays?: number | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it came; now when left out.' })
  readonly receivedAt?: Date | null;
}

@InputType({ description: 'Records one resistance and insulation test.' })
export class RecordCableReadingInput extends KeyedInput {
  @Field(() => ID, { description: 'The heating set.' })
  readonly heatingSetId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision it was read at; checked when given.' })
  readonly revision?: number | null;

  @Field(() => ReadingStage, { description: 'When in the work it was taken.' })
  readonly stage!: ReadingStage;

  @Field(() => ID, {
    nullable: true,
    description: 'The area just laid or covered; left out for received and before hookup.',
  })
  readonly areaId?: string | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was taken; now when left out.' })
  readonly at?: Date | null;

  @Field(() => Float, { description: 'Resistance between the conductors, Ω, the cold lead counted in.' })
  readonly ohms!: number;

  @Field(() => Float, { description: 'Insulation resistance to ground, MΩ.' })
  readonly megaohms!: number;

  @Field(() => Float, { description: 'Voltage of the insulation test, V.' })
  readonly testVolts!: number;

  @Field(() => Float, { description: 'Temperature of the cable, °F.' })
  readonly cableTempF!: number;
}
