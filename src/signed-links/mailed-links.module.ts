import { Module } from '@nestjs/common';
import { MailedLinks } from './mailed-links.js';

/** Links for messages on their way out; all that a worker needs of signed links. */
@Module({ providers: [MailedLinks], exports: [MailedLinks] })
export class MailedLinksModule {}
