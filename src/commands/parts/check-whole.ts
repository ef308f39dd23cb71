import { checkCabinet, today } from '../../catalogue/check-cabinet.ts';
import type { CheckedCabinet } from '../../catalogue/check-cabinet.ts';
import { earlierIn } from '../../catalogue/kept-answers.ts';
import { recoverCabinet } from '../../catalogue/keep/change-cabinet.ts';
import { orderProblems } from '../../catalogue/problem.ts';
import { checkPictures } from '../../photographs/verify/check-pictures.ts';
import { readIndex } from '../../photographs/cache/picture-cache.ts';
import { cacheFolder } from './cache-folder.ts';
import { programDigest } from './last-site.ts';
import { PRIVACY } from '../../privacy/privacy.ts';

/** Takes back what a killed command left half-done, reads a cabinet and finds every problem it has, in its texts and in its photographs, in file order. `shown` may change what is handed on. */
export async function checkWhole(
  at: string,
  shown: (records: CheckedCabinet['records']) => CheckedCabinet['records'] = (records) => records,
): Promise<CheckedCabinet> {
  await recoverCabinet(at);
  const earlier = earlierIn(cacheFolder('read', at), programDigest());
  const { records, problems, folder } = await checkCabinet(at, PRIVACY, today(), earlier);
  await earlier.keep();
  const pictures = await checkPictures(records.pieces, at, await readIndex(cacheFolder('photographs', at)));
  return { records: shown(records), folder, problems: orderProblems([...problems, ...pictures]) };
}
