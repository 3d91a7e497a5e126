import { Args, ID, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import type { Crew as CrewRow } from '../generated/prisma/client.js';
import { Person } from '../people/people.face.js';
import type { Context } from '../platform/context.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import { Crew } from './crew.model.js';
import { CrewExceptionsService } from './crew-exceptions.service.js';
import { CrewReader } from './crew-reader.js';
import {
  ClearCrewExceptionInput,
  CreateCrewInput,
  SetCrewExceptionInput,
  UpdateCrewInput,
} from './crews.inputs.js';
import {
  ClearCrewExceptionOutcome,
  CreateCrewOutcome,
  SetCrewExceptionOutcome,
  UpdateCrewOutcome,
} from './crews.outcomes.js';
import { CrewsService } from './crews.service.js';
import { CrewException, DayHours } from './week.model.js';
import { hourRanges, weekRows } from './week-rows.js';

const INPUT = { description: 'What is asked for.' };

@Resolver(() => Crew)
export class CrewsResolver {
  constructor(
    private readonly reader: CrewReader,
    private readonly crews: CrewsService,
    private readonly exceptionsOfCrews: CrewExceptionsService,
  ) {}

  @Query(() => [Crew], { name: 'crews', description: 'The crews of the company by name.' })
  list(@Ctx() ctx: Context) {
    return this.reader.list(ctx);
  }

  @Query(() => Crew, { nullable: true, description: 'One crew; null when there is none of that id.' })
  crew(@Ctx() ctx: Context, @Args('id', { type: () => ID, description: 'Id of the crew.' }) id: string) {
    return this.reader.byId(ctx, id);
  }

  @ResolveField(() => [DayHours], { description: 'Weekly hours: all seven days, Monday first.' })
  week(@Parent() crew: CrewRow) {
    return weekRows(crew.week);
  }

  @ResolveField(() => [CrewException], { description: 'Days on which the hours differ, in order.' })
  async exceptions(@Ctx() ctx: Context, @Parent() crew: CrewRow) {
    const rows = await this.reader.exceptions(ctx, crew.id);
    return rows.map((row) => ({
      ...row,
      day: row.day.toISOString().slice(0, 10),
      hours: hourRanges(row.hours),
    }));
  }

  @ResolveField(() => [Person], { description: 'The people who work in it, by name.' })
  members(@Ctx() ctx: Context, @Parent() crew: CrewRow) {
    return this.reader.members(ctx, crew.id);
  }

  @Mutation(() => CreateCrewOutcome, { description: 'Adds a crew.' })
  @Allow('office')
  createCrew(@Ctx() ctx: Context, @Args('input', INPUT) input: CreateCrewInput) {
    return this.crews.create(ctx, input);
  }

  @Mutation(() => UpdateCrewOutcome, { description: 'Changes a crew.' })
  @Allow('office')
  updateCrew(@Ctx() ctx: Context, @Args('input', INPUT) input: UpdateCrewInput) {
    return this.crews.update(ctx, input);
  }

  @Mutation(() => SetCrewExceptionOutcome, { description: "Sets a crew's hours on one day." })
  @Allow('office')
  setCrewException(@Ctx() ctx: Context, @Args('input', INPUT) input: SetCrewExceptionInput) {
    return this.exceptionsOfCrews.set(ctx, input);
  }

  @Mutation(() => ClearCrewExceptionOutcome, { description: 'Lets one day follow the week again.' })
  @Allow('office')
  clearCrewException(@Ctx() ctx: Context, @Args('input', INPUT) input: ClearCrewExceptionInput) {
    return this.exceptionsOfCrews.clear(ctx, input);
  }
}
