import { Args, Mutation, Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Phase as PhaseRow } from '../generated/prisma/client.js';
import { HoldPoint, HoldPointReader, Inspection, InspectionReader } from '../inspections/inspections.face.js';
import { Clearance, JobReader, Phase, PhaseReader } from '../jobs/jobs.face.js';
import type { Context } from '../platform/context.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import { Obstacle } from './obstacle.model.js';
import { ObstacleReader } from './obstacle-reader.js';
import type { FoundObstacle } from './obstacles/obstacle.js';
import { PhaseChanged } from './phase-changed.model.js';
import {
  FinishPhaseInput,
  PutBackPhaseInput,
  RecordProgressInput,
  StartPhaseInput,
} from './phases.inputs.js';
import {
  FinishPhaseOutcome,
  PutBackPhaseOutcome,
  RecordProgressOutcome,
  StartPhaseOutcome,
} from './phases.outcomes.js';
import { PhasesService } from './phases.service.js';

const INPUT = { description: 'What happened to the phase.' };

@Resolver(() => Phase)
export class PhasesResolver {
  constructor(
    private readonly phases: PhasesService,
    private readonly reader: ObstacleReader,
  ) {}

  @ResolveField(() => [Obstacle], {
    description:
      'What stands in the way of starting it, or of finishing it once started, and who can lift it.',
  })
  obstacles(@Ctx() ctx: Context, @Parent() phase: PhaseRow) {
    return this.reader.of(ctx, phase);
  }

  @Mutation(() => StartPhaseOutcome, { description: 'Starts a phase unless something stands in its way.' })
  @Allow('office', 'foreman')
  startPhase(@Ctx() ctx: Context, @Args('input', INPUT) input: StartPhaseInput) {
    return this.phases.start(ctx, input);
  }

  @Mutation(() => FinishPhaseOutcome, { description: 'Finishes a phase unless something stands in its way.' })
  @Allow('office', 'foreman')
  finishPhase(@Ctx() ctx: Context, @Args('input', INPUT) input: FinishPhaseInput) {
    return this.phases.finish(ctx, input);
  }

  @Mutation(() => PutBackPhaseOutcome, { description: 'Takes back a start or a finish that was wrong.' })
  @Allow('office', 'foreman')
  putBackPhase(@Ctx() ctx: Context, @Args('input', INPUT) input: PutBackPhaseInput) {
    return this.phases.putBack(ctx, input);
  }

  @Mutation(() => RecordProgressOutcome, { description: 'Tells how much work is left of a started phase.' })
  @Allow('office', 'foreman')
  recordProgress(@Ctx() ctx: Context, @Args('input', INPUT) input: RecordProgressInput) {
    return this.phases.progress(ctx, input);
  }
}

@Resolver(() => PhaseChanged)
export class PhaseChangedResolver {
  constructor(private readonly reader: PhaseReader) {}

  @ResolveField(() => Phase, { description: 'The phase as it now stands.' })
  phase(@Ctx() ctx: Context, @Parent() { phaseId }: PhaseChanged) {
    return this.reader.byId(ctx, phaseId);
  }
}

@Resolver(() => Obstacle)
export class ObstacleResolver {
  constructor(
    private readonly points: HoldPointReader,
    private readonly phases: PhaseReader,
    private readonly inspections: InspectionReader,
    private readonly jobs: JobReader,
  ) {}

  @ResolveField(() => HoldPoint, { nullable: true, description: 'The hold point it is about.' })
  holdPoint(@Ctx() ctx: Context, @Parent() { holdPointId }: FoundObstacle) {
    return this.points.byId(ctx, holdPointId ?? null);
  }

  @ResolveField(() => Phase, { nullable: true, description: 'The other phase it is about.' })
  phase(@Ctx() ctx: Context, @Parent() { phaseId }: FoundObstacle) {
    return this.phases.byId(ctx, phaseId ?? null);
  }

  @ResolveField(() => Inspection, { nullable: true, description: 'The inspection it is about.' })
  inspection(@Ctx() ctx: Context, @Parent() { inspectionId }: FoundObstacle) {
    return this.inspections.byId(ctx, inspectionId ?? null);
  }

  @ResolveField(() => Clearance, { nullable: true, description: 'The clearance it is about.' })
  clearance(@Ctx() ctx: Context, @Parent() { clearanceId }: FoundObstacle) {
    return this.jobs.clearanceById(ctx, clearanceId ?? null);
  }
}
