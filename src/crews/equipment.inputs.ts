import { Field, InputType, Int } from '@nestjs/graphql';
import { KeyedInput } from '../platform/graphql/client-key.js';

/** How much of a kind of equipment there is. */
@InputType({ description: 'How much of a kind of equipment the company owns; adds the kind when it is new.' })
export class SetEquipmentInput extends KeyedInput {
  @Field(() => String, { description: 'Key that templates ask for: blanket, enclosure, heater, ...' })
  readonly kind!: string;

  @Field(() => String, { description: 'Name as shown.' })
  readonly name!: string;

  @Field(() => String, { description: 'Unit of the quantity: pieces, sq ft, ...' })
  readonly unit!: string;

  @Field(() => Int, { description: 'How much there is, 0 or more.' })
  readonly quantity!: number;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;
}
