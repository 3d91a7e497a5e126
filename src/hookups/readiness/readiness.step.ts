import { Injectable, type OnModuleInit } from '@nestjs/common';
import { settleWaits } from '../../phases/gates.face.js';
import { ChangeSteps } from '../../platform/change/change-steps.js';
import { deriveReadiness } from './derive-readiness.js';

/**
 * Follows every change: waits that are over are settled first, for a finished bed or a passed moment can be the last
 * need; then every hookup is brought in line with its needs.
 */
@Injectable()
export class ReadinessStep implements OnModuleInit {
  constructor(private readonly steps: ChangeSteps) {}

  onModuleInit(): void {
    this.steps.register('hookupReadiness', async (change) => {
      await settleWaits(change);
      await deriveReadiness(change);
    });
  }
}
