import { Field, GraphQLISODateTime, ID, InputType, Int } from '@nestjs/graphql';
import { KeyedInput } from '../../platform/graphql/client-key.js';

/** A clearance that was asked for. */
@InputType({ description: 'A clearance that was asked for just now.' })
export class RequestClearanceInput extends KeyedInput {
  @Field(() => ID, { description: 'The clearance.' })
  readonly clearanceId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;
}

/** A clearance that was given. */
@InputType({ description: 'A clearance that was given, or material that came.' })
export class RecordClearanceInput extends KeyedInput {
  @Field(() => ID, { description: 'The clearance.' })
  readonly clearanceId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;

  @Field(() => GraphQLISODateTime, { nullable: true, description: 'When it was given; now when left out.' })
  readonly clearedAt?: Date | null;

  @Field(() => String, { nullable: true, description: 'Permit, ticket or order number.' })
  readonly reference?: string | null;

  @Field(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When it lapses, as the paper says; by its usual life when left out.',
  })
  readonly lapsesAt?: Date | null;
}
