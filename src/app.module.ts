import { Module } from '@nestjs/common';
import { BoardModule } from './board/board.module.js';
import { CrewsModule } from './crews/crews.module.js';
import { CureModule } from './cure/cure.module.js';
import { DesignModule } from './design/design.module.js';
import { HeatingModule } from './heating/heating.module.js';
import { HookupsModule } from './hookups/hookups.module.js';
import { InspectionsModule } from './inspections/inspections.module.js';
import { JobsModule } from './jobs/jobs.module.js';
import { LinkPhotosModule } from './link-photos/link-photos.module.js';
import { NoticesModule } from './notices/notices.module.js';
import { OwnerWeekModule } from './owner-week/owner-week.module.js';
import { PeopleModule } from './people/people.module.js';
import { PhasesModule } from './phases/phases.module.js';
import { PhotosModule } from './photos/photos.module.js';
import { ApiModule } from './platform/graphql/graphql.module.js';
import { PlatformModule } from './platform/platform.module.js';
import { PlanningModule } from './planning/planning.module.js';
import { RecordsModule } from './records/records.module.js';
import { RemindersModule } from './reminders/reminders.module.js';
import { SignedLinksModule } from './signed-links/signed-links.module.js';
import { SitesModule } from './sites/sites.module.js';
import { WeatherModule } from './weather/weather.module.js';
import { WorkerModule } from './worker/worker.module.js';

/** The features of the service, the same in every process; `AppModule` adds the endpoint. */
@Module({
  imports: [
    PlatformModule,
    PeopleModule,
    SignedLinksModule,
    CrewsModule,
    SitesModule,
    JobsModule,
    InspectionsModule,
    CureModule,
    DesignModule,
    HeatingModule,
    PhasesModule,
    PhotosModule,
    HookupsModule,
    BoardModule,
    OwnerWeekModule,
    LinkPhotosModule,
    PlanningModule,
    NoticesModule,
    RecordsModule,
    RemindersModule,
    WeatherModule,
    WorkerModule,
  ],
})
export class CoreModule {}

/** The service with its GraphQL endpoint. */
@Module({ imports: [CoreModule, ApiModule] })
export class AppModule {}
