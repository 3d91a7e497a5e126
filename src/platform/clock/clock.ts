import { readFileSync } from 'node:fs';

/** The one source of the present; features never read the system's clock themselves. */
export abstract class Clock {
  abstract now(): Date;
}

/** The machine's own clock. */
export class SystemClock extends Clock {
  override now(): Date {
    return new Date();
  }
}

/**
 * A clock moved by whoever writes a file that holds an ISO instant; for rehearsals that walk through weeks with real
 * processes. Time stands still between two writes.
 */
export class FileClock extends Clock {
  constructor(private readonly path: string) {
    super();
  }

  override now(): Date {
    const text = readFileSync(this.path, 'utf8').trim();
    const instant = new Date(text);
    if (Number.isNaN(instant.getTime())) {
      throw new Error(
        `The clock file ${this.path} holds "${text}"; write an ISO instant such as 2031-01-06T12:00:00Z`,
      );
    }
    return instant;
  }
}
