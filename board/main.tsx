import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.js';
import './styles/tokens.css';
import './styles/base.css';
import './styles/controls.css';

const root = document.getElementById('root');
if (!root) throw new Error('index.html has no element with the id "root"');
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
