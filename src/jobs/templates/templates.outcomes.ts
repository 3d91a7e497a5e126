import { ObjectType } from '@nestjs/graphql';
import { outcomeUnion } from '../../platform/outcomes/outcome-union.js';

/** What saving a template gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The template as it was saved.' })
export class TemplateSaved {
  readonly templateId!: string;
}

export const SaveTemplateOutcome = outcomeUnion('SaveTemplateOutcome', TemplateSaved);
