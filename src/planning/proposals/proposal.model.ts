import { Field, GraphQLISODateTime, ID, Int, ObjectType } from '@nestjs/graphql';
import { ProposalState } from '../../generated/prisma/enums.js';
import { connectionType } from '../../platform/graphql/page.js';
import '../plan-enums.js';

/** How the plan has a committed phase otherwise than was promised. */
@ObjectType({ description: 'How the plan has a committed phase otherwise than was promised.' })
export class Difference {
  @Field(() => GraphQLISODateTime, { description: 'Start as committed.' })
  readonly startBefore!: Date;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Start as planned; null when it has no place.',
  })
  readonly startAfter!: Date | null;

  @Field(() => GraphQLISODateTime, { description: 'Finish as committed.' })
  readonly finishBefore!: Date;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Finish as planned; null when it has no place.',
  })
  readonly finishAfter!: Date | null;

  readonly phaseId!: string;
  readonly crewBeforeId!: string | null;
  readonly crewAfterId!: string | null;
}

/** How the end of a job moves. */
@ObjectType({ description: 'How the end of a job moves.' })
export class JobFinish {
  @Field(() => GraphQLISODateTime, { description: 'Last finish as committed.' })
  readonly before!: Date;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Last finish of the same phases as planned; null when one of them has no place.',
  })
  readonly after!: Date | null;

  readonly jobId!: string;
}

/** How an improved plan has a phase about which nothing was promised. */
@ObjectType({ description: 'How an improved plan has a phase about which nothing was promised.' })
export class PlanMove {
  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Start in the plan in force; null without a place.',
  })
  readonly startBefore!: Date | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'Start as offered; null without a place.' })
  readonly startAfter!: Date | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Finish in the plan in force; null without a place.',
  })
  readonly finishBefore!: Date | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Finish as offered; null without a place.',
  })
  readonly finishAfter!: Date | null;

  readonly phaseId!: string;
  readonly crewBeforeId!: string | null;
  readonly crewAfterId!: string | null;
}

/** How an improved plan moves the end of a job. */
@ObjectType({ description: 'How an improved plan moves the end of a job.' })
export class JobEnd {
  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'Its end in the plan in force; null without one.',
  })
  readonly before!: Date | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'Its end as offered; null without one.' })
  readonly after!: Date | null;

  readonly jobId!: string;
}

/** A plan that differs from the commitments, waiting for the office. */
@ObjectType({
  description: 'A plan that differs from the commitments, with its differences, waiting for the office.',
})
export class Proposal {
  @Field(() => ID, { description: 'Id of the proposal.' })
  readonly id!: string;

  @Field(() => Int, { description: 'Number of the proposal in the company.' })
  readonly number!: number;

  @Field(() => Int, { description: 'Number of the plan it compares with the commitments.' })
  readonly planNumber!: number;

  @Field(() => String, { description: 'The change that brought it about.' })
  readonly cause!: string;

  @Field(() => ProposalState, { description: 'What has become of it.' })
  readonly state!: ProposalState;

  @Field(() => GraphQLISODateTime, { description: 'When it was opened.' })
  readonly createdAt!: Date;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was decided or superseded.' })
  readonly decidedAt!: Date | null;

  @Field(() => Boolean, {
    description: 'Whether its acceptance can still be undone, as far as the plan goes.',
  })
  readonly undoable!: boolean;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}

/** A page of proposals. */
export const ProposalConnection = connectionType('Proposal', Proposal);

/** What deciding a proposal gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The proposal as it now stands.' })
export class ProposalDecided {
  readonly proposalId!: string;
}
