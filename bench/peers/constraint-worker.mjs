import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { parentPort } from 'node:worker_threads';
import { runInThisContext } from 'node:vm';

/*
 * The solver's build is made for the workers of a browser. Here it gets what it asks of one: a global scope of a worker, messages, and
 * files by their addresses.
 */

const require = createRequire(import.meta.url);
globalThis.self = globalThis;
globalThis.WorkerGlobalScope = function () {};
globalThis.location = { href: import.meta.url, pathname: '/' };
globalThis.postMessage = (message) => parentPort.postMessage(message);
globalThis.fetch = async (address) => {
  const name = new URL(address).pathname.slice(1);
  const type = name.endsWith('.wasm') ? 'application/wasm' : 'application/octet-stream';
  return new Response(readFileSync(require.resolve(`minizinc/${name}`)), {
    headers: { 'content-type': type },
  });
};
const listeners = [];
globalThis.addEventListener = (kind, listener) => kind === 'message' && listeners.push(listener);
parentPort.on('message', (data) => {
  for (const listener of listeners) listener({ data });
  globalThis.onmessage?.({ data });
});
// With a Node version in sight it would look for Node's own ways of loading, which this build does not have.
// Node's own answers to requests have to be loaded before.
void new Response('');
Object.defineProperty(process, 'versions', { value: {} });
runInThisContext(readFileSync(require.resolve('minizinc/minizinc-worker.js'), 'utf8'));
