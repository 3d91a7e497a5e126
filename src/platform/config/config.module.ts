import { Global, Module } from '@nestjs/common';
import { CONFIG, parseConfig } from './config.js';

/** Gives the parsed settings to every feature. */
@Global()
@Module({
  providers: [{ provide: CONFIG, useFactory: () => parseConfig(process.env) }],
  exports: [CONFIG],
})
export class ConfigModule {}
