import { Field, ID, Int, ObjectType } from '@nestjs/graphql';

/** Equipment the company owns in a limited quantity. */
@ObjectType({ description: 'Equipment the company owns in a limited quantity.' })
export class EquipmentPool {
  @Field(() => ID, { description: 'Id of the pool.' })
  readonly id!: string;

  @Field(() => String, { description: 'Key that a template asks for: blanket, enclosure, heater, ...' })
  readonly kind!: string;

  @Field(() => String, { description: 'Name as shown.' })
  readonly name!: string;

  @Field(() => String, { description: 'Unit of the quantity: pieces, sq ft, ...' })
  readonly unit!: string;

  @Field(() => Int, { description: 'How much the company owns.' })
  readonly quantity!: number;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}
