import { EventEmitter } from 'node:events';
import { cp, mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { NO_ADDRESSES } from '../../../src/catalogue/addresses.ts';
import { handedOver, handOver } from '../../../src/catalogue/handed-over.ts';
import { readFolder } from '../../../src/catalogue/files.ts';
import { readCabinet } from '../../../src/catalogue/read-cabinet.ts';
import { followCabinet } from '../../../src/commands/dev/follow-cabinet.ts';

/** A server that watches nothing: what it is told of is told by the test, and `shown` is kept when browsers are to ask again. */
function serverTold(): { readonly server: object; readonly watcher: EventEmitter; readonly shown: Promise<void> } {
  const watcher = Object.assign(new EventEmitter(), { add: () => undefined });
  let show = (): void => undefined;
  const shown = new Promise<void>((kept) => (show = kept));
  const hot = { send: show };
  return { server: { watcher, environments: { client: { hot } } }, watcher, shown };
}

test('what was edited before the cabinet was watched is shown as soon as it is', async () => {
  const at = join(await mkdtemp(join(tmpdir(), 'follow-')), 'cabinet');
  await cp('tests/cabinets/marked', at, { recursive: true });
  const folder = await readFolder(at);
  if (folder === null) throw new Error('There is no cabinet.');
  const { records } = readCabinet(folder);
  handOver({ records, photographs: '', hasAddress: false, addresses: NO_ADDRESSES });
  const { server, watcher, shown } = serverTold();
  const hook = followCabinet(folder, () => undefined).hooks['astro:server:setup'];
  await Reflect.apply(hook ?? (() => undefined), undefined, [{ server }]);

  const piece = join(at, 'pieces/plain-penny/piece.md');
  await writeFile(piece, (await readFile(piece, 'utf8')).replace(/^title: .*/m, 'title: Edited before the watch'));
  watcher.emit('ready');
  await shown;
  expect(handedOver().records.pieces.map(({ fields }) => fields.title)).toContain('Edited before the watch');
});
