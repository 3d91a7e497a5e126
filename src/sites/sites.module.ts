import { Global, Module } from '@nestjs/common';
import { SiteReader } from './site-reader.js';

/** Sites and the authorities that inspect there. */
@Global()
@Module({ providers: [SiteReader], exports: [SiteReader] })
export class SitesModule {}
