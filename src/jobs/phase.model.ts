import { Field, GraphQLISODateTime, ID, Int, ObjectType } from '@nestjs/graphql';
import { Continuity, DurationKind, Origin, PhaseState } from '../generated/prisma/enums.js';
import './phase-enums.js';

/** A piece of work by one crew, or one wait. */
@ObjectType({ description: 'A piece of work by one crew, or one wait such as a cure.' })
export class Phase {
  @Field(() => ID, { description: 'Id of the phase.' })
  readonly id!: string;

  @Field(() => String, { description: 'Key of the phase, unique in its job.' })
  readonly key!: string;

  @Field(() => String, { description: 'Kind of work: dig, footing-pour, cable, ...' })
  readonly kind!: string;

  @Field(() => String, { description: 'Name in the words of the trade.' })
  readonly name!: string;

  @Field(() => String, {
    description:
      'Material for the hatch: earth, concrete, masonry, mesh, mortar, stone, sealant, electrical, none.',
  })
  readonly hatch!: string;

  @Field(() => String, { nullable: true, description: 'Trade that does it; null for a wait.' })
  readonly trade!: string | null;

  @Field(() => Int, { description: 'Place in the order of the job.' })
  readonly position!: number;

  @Field(() => DurationKind, { description: 'How the duration is counted.' })
  readonly durationKind!: DurationKind;

  @Field(() => Int, {
    description: 'Working minutes of the planned crew, or elapsed minutes of a wait.',
  })
  readonly durationMinutes!: number;

  @Field(() => Continuity, { description: 'Whether it may pause.' })
  readonly continuity!: Continuity;

  @Field(() => String, { nullable: true, description: 'Key of the weather limits that close it.' })
  readonly weatherLimitKey!: string | null;

  @Field(() => PhaseState, { description: 'How far it is.' })
  readonly state!: PhaseState;

  @Field(() => Origin, { description: 'Whether the template or the office made it.' })
  readonly origin!: Origin;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'Start fixed by the office.' })
  readonly pinnedStart!: Date | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it started.' })
  readonly actualStart!: Date | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it finished.' })
  readonly actualFinish!: Date | null;

  @Field(() => Int, { nullable: true, description: 'Minutes left as last told from the site.' })
  readonly remainingMinutes!: number | null;

  @Field(() => String, { nullable: true, description: 'Note, such as why it was put back.' })
  readonly note!: string | null;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}
