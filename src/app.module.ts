import { Module } from '@nestjs/common';
import { PeopleModule } from './people/people.module.js';
import { ApiModule } from './platform/graphql/graphql.module.js';
import { PlatformModule } from './platform/platform.module.js';

/** The features of the service, the same in every process; `AppModule` adds the endpoint. */
@Module({ imports: [PlatformModule, PeopleModule] })
export class CoreModule {}

/** The service with its GraphQL endpoint. */
@Module({ imports: [CoreModule, ApiModule] })
export class AppModule {}
