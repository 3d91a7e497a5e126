/** Another start for a phase, as it is tried on the board. */
export interface Tried {
  readonly phaseId: string;
  readonly way: 'notBefore' | 'fixed';
  /** The start asked for, in milliseconds since 1970, on a slot of the plan. */
  readonly at: number;
  /** The crew asked for; null leaves it to the plan. */
  readonly crewId: string | null;
}
