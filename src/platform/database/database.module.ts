import { Global, Module } from '@nestjs/common';
import { Database } from './database.js';

/** Gives the database to every feature. */
@Global()
@Module({ providers: [Database], exports: [Database] })
export class DatabaseModule {}
