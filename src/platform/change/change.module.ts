import { Global, Module } from '@nestjs/common';
import { ChangeRunner } from './change-runner.js';
import { ChangeSteps } from './change-steps.js';

/** Gives the one way to change rows to every feature. */
@Global()
@Module({ providers: [ChangeRunner, ChangeSteps], exports: [ChangeRunner, ChangeSteps] })
export class ChangeModule {}
