import { fileURLToPath } from 'node:url';

/** Root folder of the project. */
export const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/[/\\]$/, '');
