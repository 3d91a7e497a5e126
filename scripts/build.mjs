import { prepare } from './house/prepare.mjs';
import { tell } from './house/tell.mjs';

/* npm run build: installs, generates and builds what is missing. npm run generate: only up to the generated client. */

await tell(() => prepare({ upTo: process.argv.includes('--generate-only') ? 'generate' : 'build' }));
