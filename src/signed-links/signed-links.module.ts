import { Global, Module } from '@nestjs/common';
import { LinkAuthenticator } from '../platform/graphql/link-authenticator.js';
import { Contacts } from './contacts.js';
import { Guesses } from './door/guesses.js';
import { LinkDoor } from './door/link-door.js';
import { LinkReader } from './link-reader.js';
import { LinkSessions } from './link-sessions.js';
import { SheetHeads } from './sheet-heads.js';
import {
  JobSignedLinksResolver,
  SignedLinkChangedResolver,
  SignedLinkMadeResolver,
  SignedLinksResolver,
} from './signed-links.resolver.js';
import { SignedLinksRoute } from './signed-links.route.js';
import { SignedLinksService } from './signed-links.service.js';

/** Links for people without an account: made and taken back by the office, opened by a button, kept by a cookie. */
@Global()
@Module({
  providers: [
    Contacts,
    Guesses,
    JobSignedLinksResolver,
    LinkDoor,
    LinkReader,
    LinkSessions,
    SheetHeads,
    SignedLinkChangedResolver,
    SignedLinkMadeResolver,
    SignedLinksResolver,
    SignedLinksRoute,
    SignedLinksService,
    { provide: LinkAuthenticator, useExisting: LinkSessions },
  ],
  exports: [LinkAuthenticator, LinkSessions, SheetHeads],
})
export class SignedLinksModule {}
