import { parentPort, workerData } from 'node:worker_threads';
import { checkWhole } from '../parts/check-whole.ts';

// A thread of its own: the whole check of a large cabinet takes seconds, in which no page would be served.
const { problems } = await checkWhole(String(workerData));
parentPort?.postMessage(problems);
