import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { CabinetFile } from '../../src/catalogue/files.ts';
import { cabinetReader } from '../../src/catalogue/read-cabinet.ts';
import { exposedAgain, exposedIn } from '../../src/privacy/private-in-text.ts';
import { tries } from '../tries.ts';

/** What the public texts say; taking one out of a title may make a secret of it elsewhere. */
const SAID = ['Marlow', 'a box of pearwood', 'Ship under sail', '41.50 GBP', 'bought at the Saltings', 'hole seven'];
const LEDGERS = [
  'piece,cost,seller,storage,notes\n1,41.50 GBP,"The heirs of Marlow, Ely",hole seven in a box of pearwood,Ship under sail\n',
  'piece,cost,seller,storage,notes\n2,,,,Ship under sail. Marlow had it from the Saltings\n',
].map((text) => ({ file: 'private/ledger.csv', text }));
const CABINET: CabinetFile = {
  file: 'cabinet.yaml',
  text: 'title: A cabinet\nkeeper: A keeper\nlanguage: en\ncurrency: GBP\n',
};

function piece(id: number, title: number | null, story: number | null): CabinetFile {
  const words = title === null ? 'Penny' : `Penny, ${SAID[title] ?? ''}`;
  const text = `---\nnumber: "${id}"\ntitle: ${words}\nkind: coin\n---\n${story === null ? '' : `It came with ${SAID[story] ?? ''} once.`}\n`;
  return { file: `pieces/${id}/piece.md`, text };
}

const some = fc.option(fc.nat(SAID.length - 1));
/** Rounds, each with the pieces that are made anew in it and the ledger of it. */
const rounds = fc.array(
  fc.record({
    anew: fc.array(fc.tuple(fc.nat(3), some, some), { maxLength: 3 }),
    ledger: fc.nat(LEDGERS.length - 1),
  }),
  { minLength: 2, maxLength: 5 },
);

test('round after round the same is found as in a cabinet looked through for the first time', () => {
  const sorted = (found: ReturnType<typeof exposedIn>): readonly string[] =>
    [...new Set(found.map((one) => JSON.stringify(one)))].sort();
  fc.assert(
    fc.property(rounds, (all) => {
      const [read, again] = [cabinetReader(), exposedAgain()];
      const pieces = [0, 1, 2, 3].map((id) => piece(id, id, null));
      for (const { anew, ledger } of all) {
        for (const [id, title, story] of anew) pieces[id] = piece(id, title, story);
        const files = [CABINET, ...pieces, LEDGERS[ledger] ?? CABINET];
        const { records } = read({ at: '/', files });
        expect(sorted(again(records, { at: '/', files }))).toEqual(
          sorted(exposedIn(read({ at: '/', files: files.map((one) => ({ ...one })) }).records, { at: '/', files })),
        );
      }
    }),
    { numRuns: tries(1000) },
  );
});
