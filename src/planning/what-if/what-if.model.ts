import { createUnionType, Field, GraphQLISODateTime, Int, ObjectType } from '@nestjs/graphql';
import { InvalidInput } from '../../platform/outcomes/invalid-input.js';
import { NotFound } from '../../platform/outcomes/not-found.js';
import { PlanConflict } from '../plan-conflict.model.js';

/** What a supposition does to one job. */
@ObjectType({ description: 'What a supposition does to one job.' })
export class SupposedJob {
  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Its end in the plan in force; null without one.',
  })
  readonly before!: Date | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'Its end as supposed; null without one.' })
  readonly after!: Date | null;

  @Field(() => Int, {
    nullable: true,
    description: 'Minutes of the clock by which it ends later; negative when earlier, null without an end.',
  })
  readonly laterMinutes!: number | null;

  @Field(() => Boolean, { description: 'Whether the plan in force misses its due date.' })
  readonly dueMissedBefore!: boolean;

  @Field(() => Boolean, { description: 'Whether it would miss its due date.' })
  readonly dueMissedAfter!: boolean;

  readonly jobId!: string;
}

/** Where a supposition puts a phase. */
@ObjectType({ description: 'A phase that a supposition puts elsewhere.' })
export class SupposedPhase {
  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Start in the plan in force; null without a place.',
  })
  readonly startBefore!: Date | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Start as supposed; null without a place.',
  })
  readonly startAfter!: Date | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Finish in the plan in force; null without a place.',
  })
  readonly finishBefore!: Date | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Finish as supposed; null without a place.',
  })
  readonly finishAfter!: Date | null;

  @Field(() => Boolean, { description: 'Whether the supposed extra crew would do it.' })
  readonly byExtraCrew!: boolean;

  readonly phaseId!: string;
  readonly crewBeforeId!: string | null;
  readonly crewAfterId!: string | null;
}

/** What would be. */
@ObjectType({ description: 'What would be if what was supposed came true. Nothing was written.' })
export class Supposed {
  @Field(() => [SupposedJob], { description: 'Every job of the plan, moved or not, in a fixed order.' })
  readonly jobs!: SupposedJob[];

  @Field(() => [SupposedPhase], { description: 'The phases that would move, in a fixed order.' })
  readonly phases!: SupposedPhase[];

  @Field(() => [PlanConflict], { description: 'What could then no longer be had.' })
  readonly conflictsAdded!: PlanConflict[];

  @Field(() => [PlanConflict], { description: 'What could then be had again.' })
  readonly conflictsRemoved!: PlanConflict[];
}

/** What `whatIf` answers. */
export const WhatIfOutcome = createUnionType({
  name: 'WhatIfOutcome',
  description: 'Supposed, or why not.',
  types: () => [Supposed, NotFound, InvalidInput] as const,
  resolveType: (value: object & { code?: string }) =>
    value.code === 'NotFound' ? NotFound : value.code === 'InvalidInput' ? InvalidInput : Supposed,
});
