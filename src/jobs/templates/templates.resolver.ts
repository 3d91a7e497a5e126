import { Args, ID, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import type { Template as TemplateRow } from '../../generated/prisma/client.js';
import type { Context } from '../../platform/context.js';
import { Allow, Ctx } from '../../platform/graphql/request-context.js';
import { Template } from './template.model.js';
import { TemplateReader } from './template-reader.js';
import { SaveTemplateInput } from './templates.inputs.js';
import { SaveTemplateOutcome } from './templates.outcomes.js';
import { TemplatesService } from './templates.service.js';

@Resolver(() => Template)
export class TemplatesResolver {
  constructor(
    private readonly reader: TemplateReader,
    private readonly service: TemplatesService,
  ) {}

  @Query(() => [Template], {
    description: 'The templates of the company by name; the built-in one when it has none of its own yet.',
  })
  templates(@Ctx() ctx: Context) {
    return this.reader.list(ctx);
  }

  @Query(() => Template, { nullable: true, description: 'One template; null when there is none of that id.' })
  template(
    @Ctx() ctx: Context,
    @Args('id', { type: () => ID, description: 'Id of the template.' }) id: string,
  ) {
    return this.reader.byId(ctx, id);
  }

  @ResolveField(() => String, { description: 'The template as JSON text.' })
  body(@Parent() template: TemplateRow) {
    return JSON.stringify(template.body);
  }

  @Mutation(() => SaveTemplateOutcome, { description: 'Saves a template.' })
  @Allow('office')
  saveTemplate(
    @Ctx() ctx: Context,
    @Args('input', { description: 'What is asked for.' }) input: SaveTemplateInput,
  ) {
    return this.service.save(ctx, input);
  }
}
