import { Controller, Get, Res } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import { HealthService, type Readiness } from './health.service.js';

/** Plain HTTP answers for whoever watches the service; they name no company and no person. */
@Controller('health')
export class HealthController {
  constructor(private readonly health: HealthService) {}

  /** 200 while the process answers at all. */
  @Get('live')
  live(): { live: true } {
    return { live: true };
  }

  /** 200 while database and queue answer, else 503; the body says which does not. */
  @Get('ready')
  async ready(@Res({ passthrough: true }) reply: FastifyReply): Promise<Readiness> {
    const readiness = await this.health.readiness();
    void reply.status(readiness.ready ? 200 : 503).header('cache-control', 'no-store');
    return readiness;
  }
}
