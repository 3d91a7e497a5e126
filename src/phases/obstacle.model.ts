import { Field, ObjectType } from '@nestjs/graphql';
import { Role } from '../generated/prisma/enums.js';

/** Something that stands in the way of starting a phase, or of finishing it once started. */
@ObjectType({ description: 'Something that stands in the way of starting a phase, or of finishing it.' })
export class Obstacle {
  @Field(() => String, { description: 'Stable name, the same as the refusal a start or finish would get.' })
  readonly code!: string;

  @Field(() => String, { description: 'What is missing and what to do.' })
  readonly message!: string;

  @Field(() => Role, { nullable: true, description: 'Who can lift it; null when only time can.' })
  readonly liftedBy!: Role | null;
}
