import { Field, Float, ID, Int, ObjectType } from '@nestjs/graphql';

/** Where jobs are done. */
@ObjectType({ description: 'Where jobs are done: address, zone and frost depth.' })
export class Site {
  @Field(() => ID, { description: 'Id of the site.' })
  readonly id!: string;

  @Field(() => String, { description: 'Street address.' })
  readonly address!: string;

  @Field(() => String, { description: 'Town.' })
  readonly town!: string;

  @Field(() => String, { description: 'IANA time zone of the site.' })
  readonly zone!: string;

  @Field(() => Float, { description: 'Frost depth to dig below, in inches.' })
  readonly frostDepthInches!: number;

  @Field(() => String, {
    description: 'Where the frost depth comes from, such as the local rule and its date.',
  })
  readonly frostSource!: string;

  @Field(() => Float, { nullable: true, description: 'Latitude in degrees, north positive.' })
  readonly latitude!: number | null;

  @Field(() => Float, { nullable: true, description: 'Longitude in degrees, east positive.' })
  readonly longitude!: number | null;

  @Field(() => Int, { description: 'Revision of the row.' })
  readonly revision!: number;
}
