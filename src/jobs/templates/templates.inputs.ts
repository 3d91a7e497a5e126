import { Field, ID, InputType, Int } from '@nestjs/graphql';
import { KeyedInput } from '../../platform/graphql/client-key.js';

/** A template to save. */
@InputType({ description: 'A template to save; jobs made before keep what they have.' })
export class SaveTemplateInput extends KeyedInput {
  @Field(() => ID, { nullable: true, description: 'Template to replace; a new one is made when left out.' })
  readonly templateId?: string | null;

  @Field(() => Int, { nullable: true, description: 'Revision that was read; checked when given.' })
  readonly revision?: number | null;

  @Field(() => String, { description: 'Name, unique in the company.' })
  readonly name!: string;

  @Field(() => String, { description: 'The template as JSON text.' })
  readonly body!: string;

  @Field(() => Boolean, { nullable: true, description: 'False keeps new jobs from using it.' })
  readonly active?: boolean | null;
}
