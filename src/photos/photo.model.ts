import { Field, GraphQLISODateTime, ID, Int, ObjectType } from '@nestjs/graphql';

/** A photo of a phase. */
@ObjectType({ description: 'A photo of a phase. Where it was taken is kept nowhere.' })
export class Photo {
  @Field(() => ID, { description: 'Id of the photo.' })
  readonly id!: string;

  @Field(() => String, { nullable: true, description: 'What it shows, in the words of who took it.' })
  readonly caption!: string | null;

  @Field(() => GraphQLISODateTime, { description: 'When it was taken, as the phone says.' })
  readonly takenAt!: Date;

  @Field(() => GraphQLISODateTime, { description: 'When it reached the service.' })
  readonly addedAt!: Date;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When it was released to the owner of the house; null while only the company sees it.',
  })
  readonly releasedAt!: Date | null;

  @Field(() => Int, { description: 'Revision of the photo.' })
  readonly revision!: number;

  @Field(() => String, { description: 'Path of the picture: a JPEG of at most 1600 pixels a side.' })
  readonly path!: string;

  @Field(() => String, { description: 'Path of the same picture small: at most 320 pixels a side.' })
  readonly smallPath!: string;

  @Field(() => Int, { description: 'Width of the picture in pixels.' })
  readonly width!: number;

  @Field(() => Int, { description: 'Height of the picture in pixels.' })
  readonly height!: number;
}
