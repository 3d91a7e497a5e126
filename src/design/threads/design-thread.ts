import { parentPort, workerData } from 'node:worker_threads';
import type { EntryMeasurement } from '../../../shared/entry/measurement/measurement.js';
import { showDesign } from './show-design.js';

/* Runs in a thread of its own: laying a cable takes seconds, and requests go on meanwhile. It reads the core and nothing else. */

parentPort?.postMessage(showDesign(workerData as EntryMeasurement));
