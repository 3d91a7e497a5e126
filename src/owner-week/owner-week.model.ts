import { Field, ObjectType } from '@nestjs/graphql';
import { SheetHead } from '../signed-links/signed-links.face.js';

/** One day as the owner of the house reads it. */
@ObjectType({ description: 'One day as the owner of the house reads it.' })
export class OwnerDay {
  @Field(() => String, { description: 'ISO date in the zone of the site.' })
  readonly date!: string;

  @Field(() => [String], { description: 'What happens, in plain words.' })
  readonly lines!: readonly string[];

  @Field(() => [String], { description: 'What to keep clear or leave alone.' })
  readonly keepClear!: readonly string[];

  @Field(() => [String], { description: 'Why the weather keeps work waiting.' })
  readonly weather!: readonly string[];
}

/** The next seven days of a job for the owner of the house. */
@ObjectType({ description: 'The next seven days of a job for the owner of the house; nothing internal.' })
export class OwnerWeek {
  @Field(() => SheetHead, { description: 'For whom it is, whose it is, and where.' })
  readonly head!: SheetHead;

  @Field(() => String, { description: 'The week in a sentence.' })
  readonly summary!: string;

  @Field(() => [OwnerDay], { description: 'Seven days from today on.' })
  readonly days!: readonly OwnerDay[];

  @Field(() => String, { description: 'When the way in is closed.' })
  readonly walk!: string;

  @Field(() => String, { description: 'When the heat may be switched on.' })
  readonly heat!: string;

  @Field(() => String, { nullable: true, description: 'What to mind of the heat until then.' })
  readonly heatCaution!: string | null;
}
