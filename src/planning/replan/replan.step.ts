import { Injectable, type OnModuleInit } from '@nestjs/common';
import { ChangeSteps } from '../../platform/change/change-steps.js';
import { replan } from './replan.js';

/** Plans anew after every change, in its transaction. */
@Injectable()
export class ReplanStep implements OnModuleInit {
  constructor(private readonly steps: ChangeSteps) {}

  onModuleInit(): void {
    this.steps.register('replan', replan);
  }
}
