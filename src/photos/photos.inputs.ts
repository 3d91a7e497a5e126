import { Field, ID, InputType, Int } from '@nestjs/graphql';
import { KeyedInput } from '../platform/graphql/client-key.js';

/** Names the photo and the revision it was read at. */
@InputType({ isAbstract: true })
export abstract class PhotoInput extends KeyedInput {
  @Field(() => ID, { description: 'The photo.' })
  readonly photoId!: string;

  @Field(() => Int, {
    nullable: true,
    description: 'Revision the photo was read at; left out means no check.',
  })
  readonly revision?: number | null;
}

@InputType({ description: 'Which photo the owner of the house is to see.' })
export class ReleasePhotoInput extends PhotoInput {}

@InputType({ description: 'Which photo the owner of the house is to see no longer.' })
export class TakeBackPhotoInput extends PhotoInput {}
