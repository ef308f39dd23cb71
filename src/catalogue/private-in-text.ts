import type { CabinetFolder } from './files.ts';
import type { Problem } from './problem.ts';
import { problem } from './problem.ts';
import { privateIn, searchFor } from './private-search.ts';
import { privateValues } from './private-values.ts';
import type { Records } from './records.ts';

/** Finds values of the ledger and the guide in the texts that will be published, where they can still be taken out. */
export function checkPrivateInText(records: Records, folder: CabinetFolder): readonly Problem[] {
  const search = searchFor(privateValues(folder, records));
  const hidden = new Set(records.pieces.filter(({ fields }) => fields.publish === 'no').map(({ file }) => file));
  return folder.files
    .filter(({ file }) => !file.startsWith('private/') && !hidden.has(file))
    .flatMap(({ file, text }) => {
      const small = (text ?? '').toLowerCase();
      return privateIn(small, search).map(({ value, from, column, at }) => {
        const line = small.slice(0, at).split('\n').length;
        return problem('private-in-text', { file, line }, value, column, from);
      });
    });
}
