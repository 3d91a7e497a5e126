import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { shellFiles } from './build/shell-files.js';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/**
 * Builds the client and its service worker into board/dist, which the service serves; `vite` alone forwards the API to
 * a running service.
 */
export default defineConfig({
  root: here('.'),
  plugins: [shellFiles(here('public'))],
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: 'es2022',
    rollupOptions: {
      input: { index: here('index.html'), 'service-worker': here('service-worker.ts') },
      output: {
        // The worker's address must stay, and lie at the root: it keeps the pages below it.
        entryFileNames: ({ name }) => (name === 'service-worker' ? '[name].js' : 'assets/[name]-[hash].js'),
      },
    },
  },
  server: {
    proxy: { '/graphql': { target: 'http://localhost:4480', ws: true }, '/files': 'http://localhost:4480' },
  },
});
