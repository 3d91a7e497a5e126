import { Field, GraphQLISODateTime, Int, ObjectType } from '@nestjs/graphql';
import { Crew } from '../crews/crews.face.js';
import { Job, Phase } from '../jobs/jobs.face.js';

/** Everything the schedule board shows for a stretch of days. */
@ObjectType({ description: 'Everything the schedule board shows for a stretch of days.' })
export class Board {
  @Field(() => GraphQLISODateTime, { description: 'First moment of the stretch.' })
  readonly from!: Date;

  @Field(() => GraphQLISODateTime, { description: 'End of the stretch, not part of it.' })
  readonly to!: Date;

  @Field(() => Int, { description: 'Number of the plan shown.' })
  readonly planNumber!: number;

  @Field(() => String, {
    description:
      'Number of the newest change shown; ask for changes since this number after a lost connection.',
  })
  readonly changeNumber!: string;

  @Field(() => GraphQLISODateTime, { description: 'The present, by the clock of the service.' })
  readonly now!: Date;

  @Field(() => [Job], {
    description:
      'The jobs asked for; when none were named, those entered or running and those with a phase shown.',
  })
  readonly jobs!: Job[];

  @Field(() => [Phase], {
    description: 'The phases of those jobs whose planned, committed or actual time touches the stretch.',
  })
  readonly phases!: Phase[];

  @Field(() => [Crew], { description: 'The crews asked for; when none were named, those in use.' })
  readonly crews!: Crew[];
}
