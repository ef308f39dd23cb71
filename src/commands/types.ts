import process from 'node:process';
import { changeCabinet } from '../catalogue/keep/change-cabinet.ts';
import { readFolder } from '../catalogue/files.ts';
import { good, refuse } from '../core/outcome.ts';
import { checkCabinet } from '../catalogue/check-cabinet.ts';
import { formatProblem } from '../catalogue/problem.ts';
import { proposeTypes } from '../catalogue/types/propose-types.ts';
import type { TypeProposal } from '../catalogue/types/propose-types.ts';
import { readTypes } from '../catalogue/types/types-of.ts';
import { editFields } from '../catalogue/write/edit-fields.ts';
import { PIECE_ORDER } from '../catalogue/write/write-piece.ts';
import { splitFrontMatter } from '../catalogue/front-matter.ts';
import { PRIVACY } from '../privacy/privacy.ts';
import { askYesOrNo, canAsk } from './parts/ask.ts';
import { endWith, readWords } from './parts/command-line.ts';

const HELP = `npm run types                   the series of the cabinet in content/, and how many pieces have a type
npm run types -- --assign       proposes a type for every piece that has none, and writes type: after you agree

  --yes                   writes without asking what follows from an exact reference alone
  --cabinet DIR           another cabinet

A type is proposed where a reference of the piece is the very number of one type and nothing the piece says contradicts it.
Where several types fit, they are listed and nothing is written.
`;

const { values, cabinet } = readWords(HELP, {
  cabinet: { type: 'string' },
  assign: { type: 'boolean' },
  yes: { type: 'boolean' },
});
const { records, problems } = await checkCabinet(cabinet.at, PRIVACY);
if (problems.length > 0)
  endWith(
    `${problems.map((found) => formatProblem(found, cabinet.shown)).join('\n\n')}\n\nFix the problems above first.`,
  );
const { types } = readTypes(records);
if (values.assign !== true) {
  for (const series of types.series) {
    const of = records.pieces.filter(
      ({ fields }) =>
        fields.type !== undefined && (series.types.has(fields.type) || fields.type.startsWith(`${series.id}/`)),
    );
    process.stdout.write(
      `${series.id}: ${series.fields.title}, ${String(series.types.size)} types, ${String(of.length)} pieces\n`,
    );
  }
  if (types.series.length === 0) process.stdout.write(`There is no series in ${cabinet.shown}/types.\n`);
} else {
  const proposals = proposeTypes(records, types);
  const sure = proposals.filter(({ candidates }) => candidates.length === 1);
  for (const { piece, candidates } of proposals.filter((one) => one.candidates.length > 1))
    process.stdout.write(
      `${piece}: one of ${candidates.map(({ type }) => type).join(', ')}. Look at the piece; npm run identify helps.\n`,
    );
  for (const { piece, candidates } of sure)
    process.stdout.write(`${piece}: ${candidates[0]?.type ?? ''}, by ${candidates[0]?.because ?? ''}\n`);
  if (sure.length === 0) process.stdout.write('No type follows for any piece that has none.\n');
  else await writeAll(sure);
}

async function writeAll(sure: readonly TypeProposal[]): Promise<void> {
  const count = `${String(sure.length)} ${sure.length === 1 ? 'piece' : 'pieces'}`;
  if (values.yes !== true && !canAsk()) {
    process.stdout.write(`Nothing was written. Add --yes to write type: into ${count}.\n`);
    return;
  }
  if (values.yes !== true && !(await askYesOrNo(`Write type: into ${count}?`, true)))
    endWith('Left. Nothing was written.');
  const outcome = await changeCabinet(cabinet.at, { command: 'npm run types' }, async (changes) => {
    const files = new Map((await readFolder(cabinet.at))?.files.map(({ file, text }) => [file, text]));
    for (const { file, candidates } of sure) {
      const text = files.get(file) ?? null;
      const edited = text === null ? null : withType(text, candidates[0]?.type ?? '');
      if (edited === null) return refuse(`${file} was changed meanwhile. Nothing was written; run this again.`);
      await changes.put(file, edited, text);
    }
    return good(null);
  });
  if (!outcome.ok) endWith(outcome.problem);
  process.stdout.write(`Wrote type: into ${count}. npm run undo takes it back.\n`);
}

function withType(text: string, type: string): string | null {
  if (splitFrontMatter(text) === null) return null;
  const edited = editFields(text, [{ path: ['type'], value: type }], PIECE_ORDER);
  return edited.ok ? edited.value : null;
}
