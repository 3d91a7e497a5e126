import { ObjectType } from '@nestjs/graphql';
import { connectionType } from '../platform/graphql/page.js';
import { outcomeUnion } from '../platform/outcomes/outcome-union.js';
import { Site } from './site.model.js';

/** What a change of a site gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The site as it now stands.' })
export class SiteChanged {
  readonly siteId!: string;
}

/** What a change of an authority gives; the row is loaded when it is asked for. */
@ObjectType({ description: 'The authority as it now stands.' })
export class AuthorityChanged {
  readonly authorityId!: string;
}

export const SiteConnection = connectionType('Site', Site);
export const CreateSiteOutcome = outcomeUnion('CreateSiteOutcome', SiteChanged);
export const UpdateSiteOutcome = outcomeUnion('UpdateSiteOutcome', SiteChanged);
export const CreateAuthorityOutcome = outcomeUnion('CreateAuthorityOutcome', AuthorityChanged);
