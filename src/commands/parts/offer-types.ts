import process from 'node:process';
import { readFolder } from '../../catalogue/files.ts';
import { splitFrontMatter } from '../../catalogue/front-matter.ts';
import { changeCabinet } from '../../catalogue/keep/change-cabinet.ts';
import type { Records } from '../../catalogue/records.ts';
import { proposeTypes } from '../../catalogue/types/propose-types.ts';
import type { TypeProposal } from '../../catalogue/types/propose-types.ts';
import { readTypes } from '../../catalogue/types/types-of.ts';
import { editFields } from '../../catalogue/write/edit-fields.ts';
import { PIECE_ORDER } from '../../catalogue/write/write-piece.ts';
import { good, refuse } from '../../core/outcome.ts';
import { askYesOrNo, canAsk } from './ask.ts';
import { endWith } from './command-line.ts';

const say = (text: string): void => void process.stdout.write(`${text}\n`);

/**
 * Tells the types that follow for pieces that name none, and writes them after a yes. With `isSaid` what an exact reference
 * says is written without asking; what follows from facts alone never is.
 */
export async function offerTypes(cabinet: string, records: Records, isSaid: boolean): Promise<void> {
  const { types } = readTypes(records);
  const all = proposeTypes(records, types);
  const proposals = all.filter(({ by }) => by !== 'near');
  const single = proposals.filter(({ candidates }) => candidates.length === 1);
  for (const { piece, candidates } of proposals.filter((one) => one.candidates.length > 1))
    say(
      `${piece}: one of ${candidates.map(({ type }) => type).join(', ')}. Look at the piece; npm run identify helps.`,
    );
  for (const { piece, candidates } of all.filter(({ by }) => by === 'near'))
    say(
      `${piece}: ${candidates[0]?.because ?? ''} is near ${candidates.map(({ type }) => type).join(', ')}, and no type follows from it.`,
    );
  for (const { piece, candidates, by, nearer } of single)
    say(
      `${piece}: ${candidates[0]?.type ?? ''}, by ${by === 'facts' ? 'its ' : ''}${candidates[0]?.because ?? ''}${by === 'facts' ? ' alone' : ''}${
        nearer === null ? '' : `; of those under it, what the piece says leaves ${nearer}`
      }`,
    );
  const wanted = isSaid ? single.filter(({ by }) => by === 'reference') : single;
  if (wanted.length === 0) {
    say(
      single.length === 0
        ? 'No type follows for any piece that has none.'
        : 'Nothing was written: facts alone want a yes.',
    );
    return;
  }
  const count = `${String(wanted.length)} ${wanted.length === 1 ? 'piece' : 'pieces'}`;
  if (!isSaid && !canAsk()) {
    say(`No type was written. npm run types -- --assign asks; with --yes it writes what a reference says.`);
    return;
  }
  if (!isSaid && !(await askYesOrNo(`Write type: into ${count}?`, true))) {
    say('Left. No type was written.');
    return;
  }
  const outcome = await changeCabinet(cabinet, { command: 'npm run types' }, async (changes) => {
    const files = new Map((await readFolder(cabinet))?.files.map(({ file, text }) => [file, text]));
    for (const { file, candidates } of wanted) {
      const text = files.get(file) ?? null;
      const edited = text === null ? null : withType(text, candidates[0]?.type ?? '');
      if (edited === null) return refuse(`${file} was changed meanwhile. Nothing was written; run this again.`);
      await changes.put(file, edited, text);
    }
    return good(null);
  });
  if (!outcome.ok) endWith(outcome.problem);
  say(`Wrote type: into ${count}. npm run undo takes it back.`);
}

function withType(text: string, type: TypeProposal['candidates'][number]['type']): string | null {
  if (splitFrontMatter(text) === null) return null;
  const edited = editFields(text, [{ path: ['type'], value: type }], PIECE_ORDER);
  return edited.ok ? edited.value : null;
}
