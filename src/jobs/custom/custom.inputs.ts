import { Field, ID, InputType, Int } from '@nestjs/graphql';
import { Continuity, DurationKind, LagIn, LinkKind } from '../../generated/prisma/enums.js';
import { KeyedInput } from '../../platform/graphql/client-key.js';

/** A phase that the template does not have. */
@InputType({ description: 'A phase that the template does not have.' })
export class AddPhaseInput extends KeyedInput {
  @Field(() => ID, { description: 'The job.' })
  readonly jobId!: string;

  @Field(() => String, {
    description: 'Key, unique in the job: lower-case letters, digits, hyphens and dots.',
  })
  readonly key!: string;

  @Field(() => String, { description: 'Kind of work, such as drain.' })
  readonly kind!: string;

  @Field(() => String, { description: 'Name in the words of the trade.' })
  readonly name!: string;

  @Field(() => String, {
    description: 'Hatch: earth, concrete, masonry, mesh, mortar, stone, sealant, electrical, none.',
  })
  readonly hatch!: string;

  @Field(() => String, {
    nullable: true,
    description: 'Trade that does it: labour, mason, cable, electrician, office; none for a wait.',
  })
  readonly trade?: string | null;

  @Field(() => DurationKind, { description: 'How the duration is counted.' })
  readonly durationKind!: DurationKind;

  @Field(() => Int, { description: 'Duration in minutes, a multiple of 15.' })
  readonly durationMinutes!: number;

  @Field(() => Continuity, { description: 'Whether it may pause.' })
  readonly continuity!: Continuity;

  @Field(() => String, {
    nullable: true,
    description: 'Key of the weather limits that close it; none when left out.',
  })
  readonly weatherLimitKey?: string | null;

  @Field(() => ID, { nullable: true, description: 'Area it belongs to; the whole job when left out.' })
  readonly areaId?: string | null;

  @Field(() => [ID], { nullable: true, description: 'Phases that must be finished before it starts.' })
  readonly after?: string[] | null;

  @Field(() => [ID], { nullable: true, description: 'Phases that start only when it is finished.' })
  readonly before?: string[] | null;
}

/** A phase to take out. */
@InputType({ description: 'A phase to take out of its job.' })
export class DropPhaseInput extends KeyedInput {
  @Field(() => ID, { description: 'The phase; it must not have started.' })
  readonly phaseId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;

  @Field(() => String, { description: 'Why it is not needed.' })
  readonly reason!: string;
}

/** A new dependency. */
@InputType({ description: 'A new dependency between two phases of a job.' })
export class AddLinkInput extends KeyedInput {
  @Field(() => ID, { description: 'The phase that goes before.' })
  readonly fromId!: string;

  @Field(() => ID, { description: 'The phase that waits.' })
  readonly toId!: string;

  @Field(() => LinkKind, { description: 'Which ends it ties.' })
  readonly kind!: LinkKind;

  @Field(() => Int, {
    nullable: true,
    description: 'Minutes between the two ends, a multiple of 15; 0 when left out.',
  })
  readonly lagMinutes?: number | null;

  @Field(() => LagIn, { nullable: true, description: 'How the lag is counted; elapsed when left out.' })
  readonly lagIn?: LagIn | null;
}

/** A dependency to remove. */
@InputType({ description: 'A dependency to remove.' })
export class RemoveLinkInput extends KeyedInput {
  @Field(() => ID, { description: 'The link.' })
  readonly linkId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;
}
