/** A promise that a plan breaks without saying so. */
export interface Violation {
  readonly rule: string;
  /** Phase, inspection, job, crew or pool. */
  readonly subject: string;
  readonly text: string;
}

/** Names a violation. */
export function violation(rule: string, subject: string, text: string): Violation {
  return { rule, subject, text };
}
