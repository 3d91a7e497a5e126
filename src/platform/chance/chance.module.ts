import { Global, Module } from '@nestjs/common';
import { Chance, SystemChance } from './chance.js';

/** Gives chance to every feature. */
@Global()
@Module({ providers: [{ provide: Chance, useClass: SystemChance }], exports: [Chance] })
export class ChanceModule {}
