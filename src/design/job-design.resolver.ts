import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import { checkMeasurement } from '../../shared/entry/measurement/check-measurement.js';
import type { Job as JobRow } from '../generated/prisma/client.js';
import { Job } from '../jobs/jobs.face.js';
import { entryDesignOf } from './entry-design-of.js';
import { EntryDesigner } from './entry-designer.js';
import { EntryDesign } from './models/entry-design.model.js';

@Resolver(() => Job)
export class JobDesignResolver {
  constructor(private readonly designer: EntryDesigner) {}

  @ResolveField(() => EntryDesign, {
    nullable: true,
    description:
      'Heat, cable on the plan, circuits, risers, footing and drawings; null when the measurement cannot be read.',
  })
  async design(@Parent() job: JobRow): Promise<EntryDesign | null> {
    const checked = checkMeasurement(job.measurement);
    return checked.ok ? entryDesignOf(await this.designer.of(checked.measurement)) : null;
  }
}
