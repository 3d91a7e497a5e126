import { Field, GraphQLISODateTime, ID, Int, ObjectType } from '@nestjs/graphql';

/** A photo as the holder of a signed link sees it. */
@ObjectType({ description: 'A photo as the holder of a signed link sees it; nobody is named.' })
export class LinkPhoto {
  @Field(() => ID, { description: 'Id of the photo.' })
  readonly id!: string;

  @Field(() => String, { nullable: true, description: 'What it shows, in the words of who took it.' })
  readonly caption!: string | null;

  @Field(() => GraphQLISODateTime, { description: 'When it was taken.' })
  readonly takenAt!: Date;

  @Field(() => String, { description: 'Path of the picture, for the browser in which the link is open.' })
  readonly path!: string;

  @Field(() => String, { description: 'Path of the same picture small.' })
  readonly smallPath!: string;

  @Field(() => Int, { description: 'Width of the picture in pixels.' })
  readonly width!: number;

  @Field(() => Int, { description: 'Height of the picture in pixels.' })
  readonly height!: number;
}
