import { Field, ID, Int, ObjectType, registerEnumType } from '@nestjs/graphql';
import { AreaKind } from '../generated/prisma/enums.js';

registerEnumType(AreaKind, {
  name: 'AreaKind',
  description: 'Kind of a surface of the entry.',
  valuesMap: {
    landing: { description: 'The landing at the door.' },
    flight: { description: 'A flight of steps.' },
    walk: { description: 'A walk.' },
  },
});

/** A surface of a job. */
@ObjectType({ description: 'A surface of a job: landing, flight of steps or walk.' })
export class Area {
  @Field(() => ID, { description: 'Id of the area.' })
  readonly id!: string;

  @Field(() => String, { description: 'Key of the area, unique in its job.' })
  readonly key!: string;

  @Field(() => AreaKind, { description: 'What it is.' })
  readonly kind!: AreaKind;

  @Field(() => String, { description: 'Name as shown.' })
  readonly name!: string;

  @Field(() => Int, { description: 'Place in the order of the areas, from the door outwards.' })
  readonly position!: number;

  @Field(() => Boolean, { description: 'Whether heating cable runs under it.' })
  readonly heated!: boolean;
}
