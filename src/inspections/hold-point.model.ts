import { Field, GraphQLISODateTime, ID, Int, ObjectType } from '@nestjs/graphql';
import { Gate, HoldPointKind, HoldPointState } from '../generated/prisma/enums.js';
import { ReadingStage } from './reading-stage.js';
import './hold-point-enums.js';

/** Something that must be released before a phase may start or finish. */
@ObjectType({
  description: 'Something that must be released before a phase may start, or before it may finish.',
})
export class HoldPoint {
  @Field(() => ID, { description: 'Id of the hold point.' })
  readonly id!: string;

  @Field(() => String, { description: 'Key within its phase.' })
  readonly key!: string;

  @Field(() => HoldPointKind, { description: 'What kind of thing must be released.' })
  readonly kind!: HoldPointKind;

  @Field(() => Gate, { description: 'Whether it stands before the start or the finish of the phase.' })
  readonly gate!: Gate;

  @Field(() => String, { description: 'What it is called on site.' })
  readonly title!: string;

  @Field(() => String, { nullable: true, description: 'What a person must mind here.' })
  readonly caution!: string | null;

  @Field(() => Boolean, { description: 'Whether the office may waive it with a reason.' })
  readonly waivable!: boolean;

  @Field(() => HoldPointState, { description: 'State of the hold point.' })
  readonly state!: HoldPointState;

  @Field(() => ReadingStage, { nullable: true, description: 'Stage of the reading it waits for.' })
  readonly readingStage!: ReadingStage | null;

  @Field(() => String, { nullable: true, description: 'Why it was refused, waived or decided.' })
  readonly reason!: string | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was decided.' })
  readonly decidedAt!: Date | null;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}
