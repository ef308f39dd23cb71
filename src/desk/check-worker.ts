import { parentPort, workerData } from 'node:worker_threads';
import { checkCabinet } from '../catalogue/check-cabinet.ts';
import { improvementsOf } from '../catalogue/improvements.ts';
import { PRIVACY } from '../privacy/privacy.ts';

// A thread of its own: a large cabinet is checked while the desk goes on answering.
const { records, problems } = await checkCabinet(workerData as string, PRIVACY);
parentPort?.postMessage({ problems, improvements: improvementsOf(records) });
