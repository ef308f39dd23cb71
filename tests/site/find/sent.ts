import { finderOf } from '../../../src/site/find/choose.ts';
import type { Finder } from '../../../src/site/find/choose.ts';
import { packRecords, packTexts } from '../../../src/site/find/pack.ts';
import type { PackedRecords, PackedTexts } from '../../../src/site/find/pack.ts';
import { readMeasure } from '../../../src/site/find/read-measure.ts';
import type { FindRecord } from '../../../src/site/find/record.ts';

/** What finds among records as a browser is sent them. */
export function finderAsSent(records: readonly FindRecord[]): Finder {
  const sent = <T>(packed: T): T => JSON.parse(JSON.stringify(packed)) as T;
  return finderOf(
    sent<PackedRecords>(packRecords(records, 'a')),
    sent<PackedTexts>(packTexts(records, 'a')),
    readMeasure,
  );
}
