import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

/** Builds the client into board/dist, which the service serves; `vite` alone forwards the API to a running service. */
export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  build: { outDir: 'dist', emptyOutDir: true, target: 'es2022' },
  server: { proxy: { '/graphql': { target: 'http://localhost:4480', ws: true } } },
});
