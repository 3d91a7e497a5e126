import { Field, Float, ID, InputType, Int } from '@nestjs/graphql';
import { KeyedInput } from '../platform/graphql/client-key.js';

/** A new site. */
@InputType({ description: 'A new site.' })
export class CreateSiteInput extends KeyedInput {
  @Field(() => String, { description: 'Street address.' })
  readonly address!: string;

  @Field(() => String, { description: 'Town.' })
  readonly town!: string;

  @Field(() => String, { description: 'IANA time zone.' })
  readonly zone!: string;

  @Field(() => Float, { description: 'Frost depth to dig below, in inches.' })
  readonly frostDepthInches!: number;

  @Field(() => String, {
    description: 'Where the frost depth comes from, such as the local rule and its date.',
  })
  readonly frostSource!: string;

  @Field(() => ID, { nullable: true, description: 'Authority that inspects there.' })
  readonly authorityId?: string | null;

  @Field(() => Float, { nullable: true, description: 'Latitude in degrees, north positive.' })
  readonly latitude?: number | null;

  @Field(() => Float, { nullable: true, description: 'Longitude in degrees, east positive.' })
  readonly longitude?: number | null;
}

/** What changes at a site. */
@InputType({ description: 'What changes at a site; what is left out stays.' })
export class UpdateSiteInput extends KeyedInput {
  @Field(() => ID, { description: 'The site.' })
  readonly siteId!: string;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;

  @Field(() => String, { nullable: true, description: 'New street address.' })
  readonly address?: string | null;

  @Field(() => String, { nullable: true, description: 'New town.' })
  readonly town?: string | null;

  @Field(() => String, { nullable: true, description: 'New time zone.' })
  readonly zone?: string | null;

  @Field(() => Float, { nullable: true, description: 'New frost depth in inches.' })
  readonly frostDepthInches?: number | null;

  @Field(() => String, { nullable: true, description: 'Where the new frost depth comes from.' })
  readonly frostSource?: string | null;

  @Field(() => ID, {
    nullable: true,
    description: 'New authority; inspections of live jobs that were not requested yet move to it.',
  })
  readonly authorityId?: string | null;

  @Field(() => Float, { nullable: true, description: 'New latitude.' })
  readonly latitude?: number | null;

  @Field(() => Float, { nullable: true, description: 'New longitude.' })
  readonly longitude?: number | null;
}
