import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Context } from '../../platform/context.js';
import { Ctx } from '../../platform/graphql/request-context.js';
import { Template } from './template.model.js';
import { TemplateReader } from './template-reader.js';
import { TemplateSaved } from './templates.outcomes.js';

@Resolver(() => TemplateSaved)
export class TemplateSavedResolver {
  constructor(private readonly reader: TemplateReader) {}

  @ResolveField(() => Template, { description: 'The template.' })
  template(@Ctx() ctx: Context, @Parent() done: TemplateSaved) {
    return this.reader.byId(ctx, done.templateId);
  }
}
