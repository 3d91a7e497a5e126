import type { LoggerService } from '@nestjs/common';
import { GraphQLError } from 'graphql';
import { log } from './log.js';

/** Sends what the framework logs through the service's own log; errors meant for the caller are not logged again. */
export const nestLogger: LoggerService = {
  log: () => undefined,
  error: (message: unknown, ...rest: unknown[]) => {
    if (message instanceof GraphQLError) return;
    const text = message instanceof Error ? (message.stack ?? message.message) : String(message);
    log('error', 'The framework reports an error', { error: text, context: rest.map(String) });
  },
  warn: (message: unknown) => log('warn', String(message)),
};
