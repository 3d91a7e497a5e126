import { Global, Module } from '@nestjs/common';
import { WorkQueue } from './work-queue.js';

/** Gives the queue to the relay, the consumer and the health page. */
@Global()
@Module({ providers: [WorkQueue], exports: [WorkQueue] })
export class QueueModule {}
