import type { PlainProject } from '../../shared/schedule/improve/network.js';

/** A published single-project instance. */
export interface Project extends PlainProject {
  /** File name without its ending. */
  readonly name: string;
}

/** A file that is not what its ending says. */
export class InstanceError extends Error {
  constructor(file: string, what: string) {
    super(`${file}: ${what}`);
    this.name = 'InstanceError';
  }
}
