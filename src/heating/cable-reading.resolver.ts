import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { CableReading as ReadingRow } from '../generated/prisma/client.js';
import { Finding } from '../inspections/inspections.face.js';
import { Area, JobReader } from '../jobs/jobs.face.js';
import { PeopleService, Person } from '../people/people.face.js';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { CableReading } from './cable-reading.model.js';
import type { StoredFinding } from './readings/judge-stored.js';

@Resolver(() => CableReading)
export class CableReadingResolver {
  constructor(
    private readonly jobs: JobReader,
    private readonly people: PeopleService,
  ) {}

  @ResolveField(() => Area, { nullable: true, description: 'The area just laid or covered.' })
  area(@Ctx() ctx: Context, @Parent() row: ReadingRow) {
    return this.jobs.areaById(ctx, row.areaId);
  }

  @ResolveField(() => Person, { nullable: true, description: 'Who took it.' })
  by(@Ctx() ctx: Context, @Parent() row: ReadingRow) {
    return row.byId ? this.people.byId(ctx, row.byId) : null;
  }

  @ResolveField(() => [Finding], { description: 'Resistance and insulation against their limits.' })
  findings(@Parent() row: ReadingRow): Finding[] {
    return stored(row).findings;
  }

  @ResolveField(() => [String], {
    description: 'What to look at although it is accepted: a falling insulation.',
  })
  warnings(@Parent() row: ReadingRow): string[] {
    return stored(row).warnings;
  }

  @ResolveField(() => String, {
    nullable: true,
    description: 'What may not be done until a later reading is accepted; null for an accepted one.',
  })
  forbids(@Parent() row: ReadingRow): string | null {
    return stored(row).forbids;
  }
}

const stored = (row: ReadingRow): StoredFinding => row.finding as unknown as StoredFinding;
