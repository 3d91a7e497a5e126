import { Args, ID, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import type {
  Job as JobRow,
  Placement as PlacementRow,
  TemperatureReading as ReadingRow,
} from '../generated/prisma/client.js';
import { Job, Phase, PhaseReader } from '../jobs/jobs.face.js';
import { PeopleService, Person } from '../people/people.face.js';
import type { Context } from '../platform/context.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import { cautionsOf } from './cautions.js';
import { RecordPlacementInput, RecordTemperatureInput } from './placement.inputs.js';
import { outlookOf } from './outlook/outlook-of.js';
import { CureOutlook } from './outlook/outlook.model.js';
import { Placement } from './placement.model.js';
import { PlacementChanged, RecordPlacementOutcome, RecordTemperatureOutcome } from './placement.outcomes.js';
import { PlacementReader } from './placement-reader.js';
import { PlacementsService } from './placements.service.js';
import { protectionOf } from './stored-placement.js';
import { StrengthEstimate } from './strength-estimate.model.js';
import { TemperatureReading } from './temperature-reading.model.js';

const INPUT = { description: 'What was placed or read.' };

@Resolver(() => Placement)
export class PlacementResolver {
  constructor(
    private readonly reader: PlacementReader,
    private readonly placements: PlacementsService,
    private readonly phases: PhaseReader,
  ) {}

  @Query(() => Placement, {
    nullable: true,
    description: 'One placement; null when there is none of that id.',
  })
  placement(
    @Ctx() ctx: Context,
    @Args('id', { type: () => ID, description: 'Id of the placement.' }) id: string,
  ) {
    return this.reader.byId(ctx, id);
  }

  @ResolveField(() => Phase, { description: 'The phase that placed it.' })
  phase(@Ctx() ctx: Context, @Parent() row: PlacementRow) {
    return this.phases.byId(ctx, row.phaseId);
  }

  @ResolveField(() => [String], { description: 'What keeps it warm: blanket, enclosure, heater.' })
  protection(@Parent() row: PlacementRow): string[] {
    return protectionOf(row);
  }

  @ResolveField(() => [TemperatureReading], { description: 'The temperatures read in it, in order.' })
  readings(@Ctx() ctx: Context, @Parent() row: PlacementRow) {
    return this.reader.readings(ctx, row.id);
  }

  @ResolveField(() => StrengthEstimate, {
    description: 'Its strength by what was read in it; predicted where nothing was.',
  })
  strength(@Ctx() ctx: Context, @Parent() row: PlacementRow) {
    return this.reader.strength(ctx, row);
  }

  @ResolveField(() => CureOutlook, {
    description: 'How it goes: measured up to the last reading, predicted from there on.',
  })
  async outlook(@Ctx() ctx: Context, @Parent() row: PlacementRow): Promise<CureOutlook> {
    return outlookOf(await this.reader.prediction(ctx, row), row.requiredPsi);
  }

  @ResolveField(() => [String], { description: 'What people there must mind.' })
  cautions(@Parent() row: PlacementRow): string[] {
    return cautionsOf(row);
  }

  @Mutation(() => RecordPlacementOutcome, { description: 'Records what a started phase has placed.' })
  @Allow('office', 'foreman')
  recordPlacement(@Ctx() ctx: Context, @Args('input', INPUT) input: RecordPlacementInput) {
    return this.placements.recordPlacement(ctx, input);
  }

  @Mutation(() => RecordTemperatureOutcome, { description: 'Records a temperature read in a placement.' })
  @Allow('office', 'foreman')
  recordTemperature(@Ctx() ctx: Context, @Args('input', INPUT) input: RecordTemperatureInput) {
    return this.placements.recordTemperature(ctx, input);
  }
}

@Resolver(() => TemperatureReading)
export class TemperatureReadingResolver {
  constructor(private readonly people: PeopleService) {}

  @ResolveField(() => Person, { nullable: true, description: 'Who read it.' })
  by(@Ctx() ctx: Context, @Parent() row: ReadingRow) {
    return row.byId ? this.people.byId(ctx, row.byId) : null;
  }
}

@Resolver(() => PlacementChanged)
export class PlacementChangedResolver {
  constructor(private readonly reader: PlacementReader) {}

  @ResolveField(() => Placement, { description: 'The placement as it now stands.' })
  placement(@Ctx() ctx: Context, @Parent() { placementId }: PlacementChanged) {
    return this.reader.byId(ctx, placementId);
  }
}

@Resolver(() => Job)
export class JobPlacementsResolver {
  constructor(private readonly reader: PlacementReader) {}

  @ResolveField(() => [Placement], { description: 'What was placed, in order.' })
  placements(@Ctx() ctx: Context, @Parent() job: JobRow) {
    return this.reader.ofJob(ctx, job.id);
  }
}
