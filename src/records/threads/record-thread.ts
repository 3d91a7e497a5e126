import { parentPort, workerData } from 'node:worker_threads';
import type { RecordFacts } from '../record-facts.js';
import { makeRecord } from './make-record.js';

/* Runs in a thread of its own: a record with many photos takes a second or two, and requests go on meanwhile. */

parentPort?.postMessage(await makeRecord(workerData as RecordFacts));
