import { fileURLToPath } from 'node:url';

/** Root folder of the project, without a closing slash. */
export const projectRoot = fileURLToPath(new URL('..', import.meta.url)).replace(/[/\\]$/, '');
