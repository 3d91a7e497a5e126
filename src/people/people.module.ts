import { Global, Module } from '@nestjs/common';
import { Authenticator } from '../platform/graphql/authenticator.js';
import { PeopleResolver } from './people.resolver.js';
import { PeopleService } from './people.service.js';
import { SessionsService } from './sessions.service.js';

/** People of a company and their sessions. */
@Global()
@Module({
  providers: [
    PeopleResolver,
    PeopleService,
    SessionsService,
    { provide: Authenticator, useExisting: SessionsService },
  ],
  exports: [PeopleService, SessionsService, Authenticator],
})
export class PeopleModule {}
