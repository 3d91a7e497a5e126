import { Field, ID, ObjectType } from '@nestjs/graphql';

/** Says that something changed. */
@ObjectType({
  description: 'Says that something changed; ask for the changes since the number you saw last.',
})
export class Hint {
  @Field(() => String, {
    description:
      'Number of the newest change; 0 when hints may have been missed and everything is to be asked for.',
  })
  readonly changeNumber!: string;

  @Field(() => [ID], { description: 'Jobs the change touched; empty when it may have touched any.' })
  readonly jobIds!: string[];

  @Field(() => ID, {
    nullable: true,
    description: 'The search for a better plan that has got further; nothing else changed then.',
  })
  readonly improvementId!: string | null;
}
