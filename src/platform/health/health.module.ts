import { Module } from '@nestjs/common';
import { HealthController } from './health.controller.js';
import { HealthService } from './health.service.js';

/** The health pages. */
@Module({ controllers: [HealthController], providers: [HealthService] })
export class HealthModule {}
