import { Args, Mutation, Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Job as JobRow, Phase as PhaseRow } from '../generated/prisma/client.js';
import { HoldPoint, HoldPointReader } from '../inspections/inspections.face.js';
import { Job, Phase, PhaseReader } from '../jobs/jobs.face.js';
import { PeopleService, Person } from '../people/people.face.js';
import type { Context } from '../platform/context.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import { photoPath, smallPhotoPath } from './http/photo-paths.js';
import { Photo } from './photo.model.js';
import { PhotoReader } from './photo-reader.js';
import type { PhotoRow } from './photo-row.js';
import { ReleasePhotoInput, TakeBackPhotoInput } from './photos.inputs.js';
import { PhotoChanged, ReleasePhotoOutcome, TakeBackPhotoOutcome } from './photos.outcomes.js';
import { PhotosService } from './photos.service.js';

const INPUT = { description: 'Which photo.' };

@Resolver(() => Photo)
export class PhotoResolver {
  constructor(
    private readonly phases: PhaseReader,
    private readonly holdPoints: HoldPointReader,
    private readonly people: PeopleService,
  ) {}

  @ResolveField()
  path(@Parent() { id }: PhotoRow): string {
    return photoPath(id);
  }

  @ResolveField()
  smallPath(@Parent() { id }: PhotoRow): string {
    return smallPhotoPath(id);
  }

  @ResolveField()
  width(@Parent() { file }: PhotoRow): number {
    return file.width;
  }

  @ResolveField()
  height(@Parent() { file }: PhotoRow): number {
    return file.height;
  }

  @ResolveField(() => Phase, { nullable: true, description: 'The phase that it shows.' })
  phase(@Ctx() ctx: Context, @Parent() { phaseId }: PhotoRow) {
    return this.phases.byId(ctx, phaseId);
  }

  @ResolveField(() => HoldPoint, {
    nullable: true,
    description: 'The hold point that it is about; null for the phase as such.',
  })
  holdPoint(@Ctx() ctx: Context, @Parent() { holdPointId }: PhotoRow) {
    return holdPointId === null ? null : this.holdPoints.byId(ctx, holdPointId);
  }

  @ResolveField(() => Person, { nullable: true, description: 'Who took it.' })
  takenBy(@Ctx() ctx: Context, @Parent() { takenById }: PhotoRow) {
    return takenById === null ? null : this.people.byId(ctx, takenById);
  }
}

@Resolver(() => PhotoChanged)
export class PhotoChangedResolver {
  constructor(
    private readonly reader: PhotoReader,
    private readonly photos: PhotosService,
  ) {}

  @ResolveField(() => Photo, { nullable: true, description: 'The photo as it now stands.' })
  photo(@Ctx() ctx: Context, @Parent() { photoId }: PhotoChanged) {
    return this.reader.byId(ctx, photoId);
  }

  @Mutation(() => ReleasePhotoOutcome, { description: 'Lets the owner of the house see a photo.' })
  @Allow('office')
  releasePhoto(@Ctx() ctx: Context, @Args('input', INPUT) input: ReleasePhotoInput) {
    return this.photos.release(ctx, input);
  }

  @Mutation(() => TakeBackPhotoOutcome, {
    description: 'Keeps a photo in the company again; what was seen before stays seen.',
  })
  @Allow('office')
  takeBackPhoto(@Ctx() ctx: Context, @Args('input', INPUT) input: TakeBackPhotoInput) {
    return this.photos.takeBack(ctx, input);
  }
}

@Resolver(() => Job)
export class JobPhotosResolver {
  constructor(private readonly reader: PhotoReader) {}

  @ResolveField(() => [Photo], { description: 'Photos of the job in the order they were taken.' })
  photos(@Ctx() ctx: Context, @Parent() job: JobRow) {
    return this.reader.ofJob(ctx, job.id);
  }
}

@Resolver(() => Phase)
export class PhasePhotosResolver {
  constructor(private readonly reader: PhotoReader) {}

  @ResolveField(() => [Photo], { description: 'Photos of the phase in the order they were taken.' })
  photos(@Ctx() ctx: Context, @Parent() phase: PhaseRow) {
    return this.reader.ofPhase(ctx, phase.id);
  }
}
