// The house style comes first, so that each part's own sheet can differ from it.
import './styles/tokens.css';
import './styles/base.css';
import './styles/controls.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.js';
import { registerWorker } from './register-worker.js';

const root = document.getElementById('root');
if (!root) throw new Error('index.html has no element with the id "root"');
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
// A page of a signed link belongs to somebody who has no use of the rest of the client.
if (!/^\/(sheet|week)\//.test(location.pathname)) registerWorker();
