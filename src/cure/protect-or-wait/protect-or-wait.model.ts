import { Field, Float, GraphQLISODateTime, ID, Int, ObjectType } from '@nestjs/graphql';
import { Finding } from '../../inspections/inspections.face.js';
import { CureOutlook } from '../outlook/outlook.model.js';
import { Protection } from '../protection/protection.model.js';
import { ProtectionBranch } from './protect-or-wait.inputs.js';

/** One way with a pour, carried through the whole plan. */
@ObjectType({ description: 'One way with a pour, carried through the plan of all jobs and the whole stock.' })
export class BranchOutlook {
  @Field(() => ProtectionBranch, { description: 'Which way.' })
  readonly branch!: ProtectionBranch;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When it is placed; null when it finds no place.',
  })
  readonly placedAt!: Date | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When its cure ends by the plan.' })
  readonly curedAt!: Date | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When its job is finished by the plan.' })
  readonly jobFinish!: Date | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When the last of all jobs is finished.' })
  readonly allFinish!: Date | null;

  @Field(() => Protection, { description: 'What keeps it warm.' })
  readonly protection!: Protection;

  @Field(() => Float, {
    description: 'Days on which a piece of protecting equipment is out for it, all added up.',
  })
  readonly equipmentDays!: number;

  @Field(() => Float, { description: 'Hours of heating.' })
  readonly heatingHours!: number;

  @Field(() => CureOutlook, { nullable: true, description: 'How it cures; null when it finds no place.' })
  readonly outlook!: CureOutlook | null;

  @Field(() => Finding, { nullable: true, description: 'Whether it is warm enough as placed.' })
  readonly placing!: Finding | null;

  @Field(() => Boolean, {
    description: 'Whether the plan places it beyond the forecast, where the weather is unknown.',
  })
  readonly weatherUnknown!: boolean;

  @Field(() => Int, { description: 'Conflicts of the whole plan.' })
  readonly conflicts!: number;

  @Field(() => [String], { description: 'What people must mind who carry it out.' })
  readonly cautions!: string[];
}

/** What the two ways mean for one job. */
@ObjectType({ description: 'What the two ways mean for one job.' })
export class BranchJob {
  readonly jobId!: string;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'Its finish when the pour is protected.' })
  readonly protectFinish!: Date | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'Its finish when the pour waits.' })
  readonly waitFinish!: Date | null;

  @Field(() => Int, {
    nullable: true,
    description: 'Minutes by which waiting finishes it later; negative: earlier.',
  })
  readonly waitLaterMinutes!: number | null;
}

/** What the office chose for a phase. */
@ObjectType({ description: 'What the office chose for a phase that meets cold weather.' })
export class ProtectionChoice {
  @Field(() => ID, { description: 'Id of the choice.' })
  readonly id!: string;

  @Field(() => ProtectionBranch, { description: 'Which way.' })
  readonly branch!: ProtectionBranch;

  @Field(() => GraphQLISODateTime, { description: 'When it was chosen.' })
  readonly chosenAt!: Date;

  @Field(() => String, { nullable: true, description: 'Why.' })
  readonly reason!: string | null;
}

/** Both ways with a pour side by side. */
@ObjectType({
  description: 'Both ways with a pour side by side. It compares and does not choose: the office does.',
})
export class ProtectOrWait {
  readonly phaseId!: string;

  @Field(() => Boolean, {
    description: 'Whether air below 40 °F is forecast or assumed while it would cure.',
  })
  readonly cold!: boolean;

  @Field(() => String, { description: 'What "cold" means here, with its source.' })
  readonly coldRule!: string;

  @Field(() => BranchOutlook, { description: 'Place it now, protected.' })
  readonly protect!: BranchOutlook;

  @Field(() => BranchOutlook, { description: 'Wait for a window.' })
  readonly wait!: BranchOutlook;

  @Field(() => CureOutlook, {
    nullable: true,
    description:
      'The same pour placed when it would be protected, without the protection: what the choice is about.',
  })
  readonly bare!: CureOutlook | null;

  @Field(() => [BranchJob], { description: 'What either way means for each job, those it moves first.' })
  readonly jobs!: BranchJob[];
}
