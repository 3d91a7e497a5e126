import { Field, ID, ObjectType } from '@nestjs/graphql';

/** Something that must be met before a hookup, or before energising. */
@ObjectType({ description: 'Something that must be met before a hookup, or before energising.' })
export class Need {
  @Field(() => ID, { description: 'Stable name of the need.' })
  readonly id!: string;

  @Field(() => Boolean, { description: 'Whether it is met.' })
  readonly met!: boolean;

  @Field(() => String, { description: 'What is needed and how it stands.' })
  readonly text!: string;
}
