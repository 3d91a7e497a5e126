import { Global, Module } from '@nestjs/common';
import { HintBus } from './hint-bus.js';

/** Gives the hints between processes to whoever answers subscriptions. */
@Global()
@Module({ providers: [HintBus], exports: [HintBus] })
export class HintsModule {}
