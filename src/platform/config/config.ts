import { z } from 'zod';

/** Processes a start may run: the HTTP and GraphQL service, the queue worker with relay and sweep, or both. */
export const ROLES = ['api', 'worker'] as const;

const port = z.coerce.number().int().min(0).max(65535);

const web = z.url({ protocol: /^https?$/, error: 'must be an http:// or https:// address' });

const settings = z.object({
  DATABASE_URL: z.url({ protocol: /^postgres(ql)?$/, error: 'must be a postgresql:// address' }),
  REDIS_URL: z.url({ protocol: /^rediss?$/, error: 'must be a redis:// address' }).optional(),
  FLAGWAY_ROLES: z
    .string()
    .default('api,worker')
    .transform((text) => text.split(',').map((part) => part.trim()))
    .pipe(z.array(z.enum(ROLES)).min(1)),
  FLAGWAY_PORT: port.default(4480),
  FLAGWAY_HOST: z.string().default('127.0.0.1'),
  FLAGWAY_ORIGIN: z.url().optional(),
  FLAGWAY_SMTP_URL: z
    .url({ protocol: /^smtps?$/, error: 'must be an smtp:// or smtps:// address' })
    .optional(),
  FLAGWAY_MAIL_FROM: z.string().default('Flagway <flagway@localhost>'),
  FLAGWAY_QUEUE_PREFIX: z
    .string()
    .regex(/^[a-z0-9-]+$/)
    .default('flagway'),
  FLAGWAY_RELAY_MILLISECONDS: z.coerce.number().int().min(20).max(60_000).default(1000),
  FLAGWAY_SWEEP_MILLISECONDS: z.coerce.number().int().min(100).max(600_000).default(30_000),
  FLAGWAY_FORECAST_NATIONAL_URL: web.default('https://api.weather.gov'),
  FLAGWAY_FORECAST_HOURLY_URL: web.default('https://api.open-meteo.com/v1/forecast'),
  FLAGWAY_FORECAST_AGENT: z
    .string()
    .regex(/^[\x20-\x7e]{1,200}$/, { error: 'must be 1 to 200 plain characters on one line' })
    .default('Flagway (no contact given)'),
  FLAGWAY_FORECAST_MINUTES: z.coerce.number().int().min(10).max(1440).default(60),
  FLAGWAY_FORECASTS_AT_ONCE: z.coerce.number().int().min(1).max(32).default(4),
  FLAGWAY_FETCH_TRY_MILLISECONDS: z.coerce.number().int().min(50).max(60_000).default(15_000),
  FLAGWAY_FETCH_ALL_MILLISECONDS: z.coerce.number().int().min(50).max(300_000).default(60_000),
  FLAGWAY_FETCH_PAUSE_MILLISECONDS: z.coerce.number().int().min(1).max(10_000).default(500),
  FLAGWAY_CLOCK_FILE: z.string().optional(),
  FLAGWAY_FAULT_POINT: z.string().optional(),
  FLAGWAY_LOG: z.enum(['silent', 'error', 'warn', 'info', 'debug']).default('info'),
});

/** The service's settings, parsed once at boot from the environment. */
export type Config = z.infer<typeof settings> & { origin: string };

/** Injection token of the parsed settings. */
export const CONFIG = Symbol('config');

/** All faults of an environment at once, each naming the setting and what to write instead. */
export class ConfigError extends Error {
  constructor(readonly faults: readonly string[]) {
    super(`The settings cannot be used:\n${faults.map((fault) => `  - ${fault}`).join('\n')}`);
    this.name = 'ConfigError';
  }
}

/**
 * Parses the environment. Unknown names beginning with `FLAGWAY_` are refused, so a misspelt setting cannot pass
 * unseen.
 *
 * @throws ConfigError with every fault found.
 */
export function parseConfig(environment: Record<string, string | undefined>): Config {
  const known = new Set(Object.keys(settings.shape));
  const unknown = Object.keys(environment)
    .filter((name) => name.startsWith('FLAGWAY_') && !known.has(name))
    .map((name) => `${name} is not a setting; known are ${[...known].join(', ')}`);
  const parsed = settings.safeParse(environment);
  const faults = parsed.success
    ? []
    : parsed.error.issues.map((issue) => `${issue.path.join('.') || 'environment'}: ${issue.message}`);
  if (!parsed.success || unknown.length > 0) throw new ConfigError([...faults, ...unknown]);
  const { data } = parsed;
  return { ...data, origin: data.FLAGWAY_ORIGIN ?? `http://localhost:${data.FLAGWAY_PORT}` };
}
