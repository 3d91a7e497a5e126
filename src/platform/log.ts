const LEVELS = ['silent', 'error', 'warn', 'info', 'debug'] as const;
export type LogLevel = (typeof LEVELS)[number];

let level: LogLevel = 'info';

/** Sets how much is written; called once at boot. */
export function setLogLevel(to: LogLevel): void {
  level = to;
}

/** Writes one line of JSON to standard error. Never give it secrets: tokens, passwords, cookies. */
export function log(
  at: Exclude<LogLevel, 'silent'>,
  message: string,
  fields: Record<string, unknown> = {},
): void {
  if (LEVELS.indexOf(at) > LEVELS.indexOf(level)) return;
  process.stderr.write(
    `${JSON.stringify({ at: new Date().toISOString(), level: at, message, ...fields })}\n`,
  );
}
