import { Global, Module } from '@nestjs/common';
import {
  CommitmentChangedResolver,
  CommitmentResolver,
  PhaseCommitmentResolver,
  SchedulingResolver,
} from './commitments/commitment.resolver.js';
import { CommitmentsService } from './commitments/commitments.service.js';
import { PinsService } from './commitments/pins.service.js';
import {
  ImprovementChangedResolver,
  ImprovementResolver,
  ProposalImprovementResolver,
} from './improve/improvement.resolver.js';
import { ImprovementReader } from './improve/improvement-reader.js';
import { ImprovementsService } from './improve/improvements.service.js';
import { CompanyPlanner } from './input/company-plan.js';
import { PlanInputResolver } from './input/plan-input.resolver.js';
import { JobRiskResolver, PhaseRiskResolver } from './risk/risk.resolver.js';
import { RiskService } from './risk/risk.service.js';
import { WhatIfService } from './what-if/what-if.service.js';
import { MoveProposedResolver, ProposalMoveResolver, ProposedMoveResolver } from './moves/move.resolver.js';
import { MoveReader } from './moves/move-reader.js';
import { MovesService } from './moves/moves.service.js';
import { PlanReader } from './plan-reader.js';
import { JobPlanResolver, PhasePlanResolver, PlannedPhaseResolver } from './planned-phase.resolver.js';
import {
  DifferenceResolver,
  JobEndResolver,
  JobFinishResolver,
  PlanMoveResolver,
} from './proposals/difference.resolver.js';
import { ProposalDecidedResolver, ProposalResolver } from './proposals/proposal.resolver.js';
import { ProposalsService } from './proposals/proposals.service.js';
import { ConflictReader } from './reasons/conflict-reader.js';
import { BoardConflictsResolver, PlanConflictResolver } from './reasons/conflict.resolver.js';
import { ReasonReader } from './reasons/reason-reader.js';
import { ReasonResolver } from './reasons/reason.resolver.js';
import { ReplanStep } from './replan/replan.step.js';
import { SupposedJobResolver, SupposedPhaseResolver } from './what-if/what-if.resolver.js';

/** The plan with its reasons and conflicts, the promises, and the proposals that compare the two. */
@Global()
@Module({
  providers: [
    ReplanStep,
    PlanReader,
    ReasonReader,
    ReasonResolver,
    ConflictReader,
    PlanConflictResolver,
    BoardConflictsResolver,
    PlannedPhaseResolver,
    PhasePlanResolver,
    JobPlanResolver,
    CommitmentsService,
    PinsService,
    SchedulingResolver,
    CommitmentResolver,
    CommitmentChangedResolver,
    PhaseCommitmentResolver,
    ProposalsService,
    ProposalResolver,
    ProposalDecidedResolver,
    DifferenceResolver,
    JobFinishResolver,
    PlanMoveResolver,
    JobEndResolver,
    CompanyPlanner,
    PlanInputResolver,
    WhatIfService,
    RiskService,
    JobRiskResolver,
    PhaseRiskResolver,
    ImprovementReader,
    ImprovementsService,
    ImprovementResolver,
    ImprovementChangedResolver,
    ProposalImprovementResolver,
    SupposedJobResolver,
    SupposedPhaseResolver,
    MoveReader,
    MovesService,
    ProposedMoveResolver,
    MoveProposedResolver,
    ProposalMoveResolver,
  ],
  exports: [PlanReader],
})
export class PlanningModule {}
