import { Inject, Injectable, type OnModuleDestroy } from '@nestjs/common';
import { PrismaPg } from '@prisma/adapter-pg';
import { type Prisma, PrismaClient } from '../../generated/prisma/client.js';
import { CONFIG, type Config } from '../config/config.js';

/** The client inside one transaction. */
export type Transaction = Prisma.TransactionClient;

/** The service's connection to PostgreSQL. Reads go straight through it; changes go through `ChangeRunner`. */
@Injectable()
export class Database extends PrismaClient implements OnModuleDestroy {
  constructor(@Inject(CONFIG) config: Config) {
    super({
      adapter: new PrismaPg({ connectionString: config.DATABASE_URL, max: 16 }),
      transactionOptions: { maxWait: 15_000, timeout: 30_000 },
    });
  }

  async onModuleDestroy(): Promise<void> {
    await this.$disconnect();
  }
}
