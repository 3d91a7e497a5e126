import { Global, Module } from '@nestjs/common';
import { AuthoritiesResolver } from './authorities.resolver.js';
import { AuthoritiesService } from './authorities.service.js';
import { AuthorityChangedResolver } from './authority-changed.resolver.js';
import { SiteChangedResolver } from './site-changed.resolver.js';
import { SiteReader } from './site-reader.js';
import { SitesResolver } from './sites.resolver.js';
import { SitesService } from './sites.service.js';

/** Sites and the authorities that inspect there. */
@Global()
@Module({
  providers: [
    SiteReader,
    SitesService,
    SitesResolver,
    SiteChangedResolver,
    AuthoritiesService,
    AuthoritiesResolver,
    AuthorityChangedResolver,
  ],
  exports: [SiteReader],
})
export class SitesModule {}
